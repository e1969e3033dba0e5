import type { ICellData, ICommandService, Nullable } from '@univerjs/core';
import type { BaseReferenceObject, LexerTreeBuilder } from '@univerjs/engine-formula';
import type { ISetRangeValuesMutationParams } from '@univerjs/sheets';

/** Rows of the tallest sheet an .xlsx file holds: how an open range is written where only closed ones exist. */
const LAST_ROW = 1_048_576;

/** Row numbers from here on mean "to the last row": row inserts and deletes move the written end a little. */
const OPEN_FROM = 1_000_000;

const QUOTED = /("(?:[^"]|"")*"|'(?:[^']|'')*')/;
const OPEN = /(?<![A-Za-z0-9_.$])(\$?[A-Za-z]{1,3}\$?\d+):(\$?[A-Za-z]{1,3})(?![A-Za-z0-9_(!.$])/g;
const CLOSED = /(?<![A-Za-z0-9_.$])(\$?[A-Za-z]{1,3}\$?\d+):(\$?[A-Za-z]{1,3})\$?(\d{7})(?!\d)/g;

/** `A2:A` becomes `A2:A1048576`; text in quotes stays. */
export function closeOpenRanges(text: string): string {
  return outsideQuotes(text, (part) => part.replace(OPEN, `$1:$2${LAST_ROW}`));
}

/** `A2:A1048576` becomes `A2:A` again. */
export function reopenRanges(text: string): string {
  return outsideQuotes(text, (part) =>
    part.replace(CLOSED, (whole, start: string, column: string, row: string) =>
      Number(row) >= OPEN_FROM ? `${start}:${column}` : whole,
    ),
  );
}

function outsideQuotes(text: string, change: (part: string) => string): string {
  if (!text.includes(':')) return text;
  return text
    .split(QUOTED)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join('');
}

/** Makes a lexer read open ranges; the formula text in the cells stays as typed. */
export function readOpenRanges(lexer: LexerTreeBuilder): void {
  const tree = lexer.treeBuilder.bind(lexer);
  const sequence = lexer.sequenceNodesBuilder.bind(lexer);
  lexer.treeBuilder = (text, ...rest) => tree(closeOpenRanges(text), ...rest);
  lexer.sequenceNodesBuilder = (text) => sequence(closeOpenRanges(text));
}

/**
 * Formulas that followed inserted rows come back with their open ranges closed: opens them before they are stored.
 *
 * @param setRangeValues - id of the mutation that stores cells
 */
export function keepOpenRanges(commands: ICommandService, setRangeValues: string): void {
  commands.beforeCommandExecuted((info) => {
    if (info.id !== setRangeValues) return;
    // The id says what the parameters are.
    const { cellValue } = info.params as ISetRangeValuesMutationParams;
    for (const cells of Object.values(cellValue ?? {})) {
      for (const cell of Object.values<Nullable<ICellData>>(cells ?? {})) {
        if (cell?.f?.includes(':')) cell.f = reopenRanges(cell.f);
      }
    }
  });
}

const NAMING = /\b(LET|LAMBDA)\(/i;

/**
 * Makes a lexer read formulas that name values anew each time.
 *
 * Parsing such a formula changes the tree the lexer keeps for its text, and the store is shared by all engines of a process:
 * the second reading gives `#N/A`.
 */
export function readNamesAnew(
  lexer: LexerTreeBuilder,
  makeLexer: new () => LexerTreeBuilder,
): void {
  const tree = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (text, ...rest) => {
    // Disposing any lexer empties the shared store.
    if (NAMING.test(text)) new makeLexer().dispose();
    return tree(text, ...rest);
  };
}

/** Ends open ranges at the last row of the sheet they point to, so that an array is no taller than its sheet. */
export function clampOpenRanges(reference: typeof BaseReferenceObject): void {
  const proto = reference.prototype;
  const original = proto.getRangeData;
  proto.getRangeData = function clamped(this: BaseReferenceObject) {
    const range = original.call(this);
    if (!(range.endRow >= OPEN_FROM - 1)) return range;
    const rows = this.getActiveSheetRowCount();
    return { ...range, endRow: Math.max(range.startRow, rows - 1) };
  };
}
