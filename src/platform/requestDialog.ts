/** Fits a laptop's screen [px]. */
const WIDTH = 860;
const HEIGHT = 640;

/**
 * Opens a page as a dialog that knows what it was opened for. Per-cent encoded, the request holds no character that means
 * anything in HTML.
 * @param page - its file, without `.html`
 */
export function requestDialog(page: string, title: string, request: object): void {
  const encoded = encodeURIComponent(JSON.stringify(request));
  const shown = HtmlService.createHtmlOutputFromFile(page)
    .append(`<div id="request" hidden data-request="${encoded}"></div>`)
    .setWidth(WIDTH)
    .setHeight(HEIGHT);
  SpreadsheetApp.getUi().showModalDialog(shown, title);
}
