import type { BaseReferenceObject, LexerTreeBuilder } from '@univerjs/engine-formula';

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
