import { parseArgs } from 'node:util';

export interface SheetOptions {
  readonly order: string;
  readonly out: string;
  readonly kind: 'pdf' | 'html';
  readonly book: string;
  readonly paper: 'Letter' | 'A4';
  /** A page of pictures behind the run sheet */
  readonly pictures: boolean;
  /** The order's quote in place of its run sheet */
  readonly quote: boolean;
}

export const SHEET_USAGE = `npm run sheet -- --order NUMBER --out FILE.pdf|FILE.html [--book FILE.xlsx] [--paper Letter|A4] [--pictures | --quote]
  --order  order number, as in the sheet Orders
  --out    file to write
  --book   workbook to read and to keep the run in (without: books/demo.xlsx, the demo shop)
  --paper  paper of a PDF (without: Letter)
  --pictures  add a page of pictures: the mold's heat-up, one round layer by layer
  --quote  the order's quote in place of its run sheet: the one it has, else a new one at the target margin`;

/** @throws Error in one sentence when an option is missing, unknown or out of bounds */
export function sheetOptions(args: readonly string[]): SheetOptions {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean' } as const;
  const { values } = parseArgs({
    args: [...args],
    options: { order: text, out: text, book: text, paper: text, pictures: flag, quote: flag },
  });
  const {
    order = '',
    out = '',
    book = 'books/demo.xlsx',
    paper = 'Letter',
    pictures = false,
    quote = false,
  } = values;
  if (order.trim() === '') throw new Error('order must be given, got nothing');
  const kind = /\.(pdf|html)$/i.exec(out)?.[1]?.toLowerCase();
  if (kind !== 'pdf' && kind !== 'html')
    throw new Error(`out must be a .pdf or .html file, got ${out === '' ? 'nothing' : out}`);
  if (paper !== 'Letter' && paper !== 'A4')
    throw new Error(`paper must be one of Letter, A4, got ${paper}`);
  if (pictures && quote) throw new Error('pictures must be left out, got them with a quote');
  return { order: order.trim(), out, kind, book, paper, pictures, quote };
}
