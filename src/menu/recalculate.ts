import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { workbook } from '../platform/workbook.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

interface Found {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/**
 * Menu item: makes every sheet function of the add-on work its answer out anew, by taking its formula out and putting
 * it back. For cells that stay on an error after a slow moment of the platform.
 * @returns formulas that were put back
 */
export function recalculate(): number {
  const count = withDocumentLock(() => putBack(workbook().getSheets().flatMap(ownFormulas)));
  workbook().toast(
    count === 1 ? '1 formula worked out anew.' : `${count} formulas worked out anew.`,
    'Recalculate',
  );
  return count;
}

function ownFormulas(sheet: Sheet): readonly Found[] {
  const formulas = sheet.getDataRange().getFormulas();
  return formulas.flatMap((cells, row) =>
    cells.flatMap((formula, column) =>
      /\bPOUR_[A-Z]/i.test(formula) ? [{ sheet, row: row + 1, column: column + 1, formula }] : [],
    ),
  );
}

/** The platform keeps an answer as long as its formula stands; the formulas go back whatever happens in between. */
function putBack(found: readonly Found[]): number {
  try {
    for (const { sheet, row, column } of found) sheet.getRange(row, column).clearContent();
    SpreadsheetApp.flush();
  } finally {
    for (const { sheet, row, column, formula } of found)
      sheet.getRange(row, column).setFormula(formula);
  }
  return found.length;
}
