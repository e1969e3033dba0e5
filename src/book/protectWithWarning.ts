type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/**
 * Warns whoever edits the range; everybody may go on. One protection per description: an existing one is moved.
 * @returns whether anything was changed
 */
export function protectWithWarning(sheet: Sheet, range: Range, description: string): boolean {
  const existing = sheet
    .getProtections(SpreadsheetApp.ProtectionType.RANGE)
    .find((one) => one.getDescription() === description);
  if (existing === undefined) {
    range.protect().setDescription(description).setWarningOnly(true);
    return true;
  }
  if (coversSameColumns(existing.getRange(), range)) return false;
  existing.setRange(range);
  return true;
}

/** Rows are left out: a sheet that grew is protected as far as it was, and the platform widens ranges itself. */
function coversSameColumns(one: Range, other: Range): boolean {
  return (
    one.getRow() === other.getRow() &&
    one.getColumn() === other.getColumn() &&
    one.getNumColumns() === other.getNumColumns()
  );
}
