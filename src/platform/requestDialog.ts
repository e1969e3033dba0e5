import { type PageName, pageText } from './pageText.ts';

/** Fits a small laptop's screen [px]; what is longer scrolls. */
const WIDTH = 860;
const HEIGHT = 560;

/**
 * Opens a page as a dialog that knows what it was opened for. Per-cent encoded, what it is handed holds no character that means
 * anything in HTML.
 * @param handed - what it asks for, and the answer where it is known already
 */
export function requestDialog(
  page: PageName,
  title: string,
  { request, answer }: { readonly request: object; readonly answer?: object },
): void {
  const known = answer === undefined ? '' : ` data-answer="${encoded(answer)}"`;
  const handed = `<div id="request" hidden data-request="${encoded(request)}"${known}></div>`;
  const text = pageText(page);
  const end = text.lastIndexOf('</body>');
  const shown = HtmlService.createHtmlOutput(text.slice(0, end) + handed + text.slice(end))
    .setWidth(WIDTH)
    .setHeight(HEIGHT);
  SpreadsheetApp.getUi().showModalDialog(shown, title);
}

function encoded(value: object): string {
  return encodeURIComponent(JSON.stringify(value));
}
