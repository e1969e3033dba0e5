/** Hands a text to the browser as a file; the page's frame may do that, nothing is sent anywhere. */
export function download(fileName: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
