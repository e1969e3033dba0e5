/** What a cell holds whose formula failed; a note such as `#3 short` is text like any other. */
const ERROR_CELL = /^#(N\/A|REF!|DIV\/0!|VALUE!|NAME\?|NUM!|NULL!|ERROR!|SPILL!|CALC!)$/;

/** True for the text of a failed formula, as the platform hands it over. */
export function isErrorCell(value: unknown): boolean {
  return typeof value === 'string' && ERROR_CELL.test(value.trim());
}
