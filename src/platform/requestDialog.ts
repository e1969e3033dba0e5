/** Fits a laptop's screen [px]. */
const WIDTH = 860;
const HEIGHT = 640;

/**
 * Opens a page as a dialog that knows what it was opened for. Per-cent encoded, what it is handed holds no character that means
 * anything in HTML.
 * @param page - its file, without `.html`
 * @param handed - what it asks for, and the answer where it is known already
 */
export function requestDialog(
  page: string,
  title: string,
  { request, answer }: { readonly request: object; readonly answer?: object },
): void {
  const known = answer === undefined ? '' : ` data-answer="${encoded(answer)}"`;
  const shown = HtmlService.createHtmlOutputFromFile(page)
    .append(`<div id="request" hidden data-request="${encoded(request)}"${known}></div>`)
    .setWidth(WIDTH)
    .setHeight(HEIGHT);
  SpreadsheetApp.getUi().showModalDialog(shown, title);
}

function encoded(value: object): string {
  return encodeURIComponent(JSON.stringify(value));
}
