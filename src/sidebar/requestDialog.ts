import type { CausesPayload } from '../../shared/commands/causeCommands.ts';
import type { DayPagePayload } from '../../shared/commands/checklistCommands.ts';
import type { OrderPayload } from '../../shared/commands/commands.ts';
import type { QualityPayload } from '../../shared/commands/qualityCommands.ts';

/** Of a dialog that is about the whole book. */
type Nothing = Readonly<Record<string, never>>;

/** Fits a laptop's screen [px]. */
const WIDTH = 860;
const HEIGHT = 640;

/**
 * Opens a page as a dialog that knows what it was opened for. Per-cent encoded, the request holds no character that means
 * anything in HTML.
 * @param page - its file, without `.html`
 */
export function requestDialog(
  page: string,
  title: string,
  request: OrderPayload | QualityPayload | CausesPayload | DayPagePayload | Nothing,
): void {
  const encoded = encodeURIComponent(JSON.stringify(request));
  const shown = HtmlService.createHtmlOutputFromFile(page)
    .append(`<div id="request" hidden data-request="${encoded}"></div>`)
    .setWidth(WIDTH)
    .setHeight(HEIGHT);
  SpreadsheetApp.getUi().showModalDialog(shown, title);
}
