import { parseArgs } from 'node:util';

export interface StartOptions {
  readonly book: string;
  /** The demo book is filled when it does not exist yet, an own book is only laid out. */
  readonly fill: 'demo' | 'layout';
  readonly port: number;
  readonly address: string;
}

/** Kept out of the repository: the person's own copy of the demo shop. */
const DEMO_BOOK = 'books/demo.xlsx';

const PORT = 8321;

export const USAGE = `npm start -- [--book FILE.xlsx] [--port NUMBER] [--listen ADDRESS]
  --book    workbook to open; made and laid out when it does not exist (without: ${DEMO_BOOK}, the demo shop)
  --port    port of the page (without: ${PORT})
  --listen  address to listen on beyond this machine, e.g. 0.0.0.0; whoever has the printed address can read and change the book`;

/** @throws Error in one sentence when an option is unknown or out of bounds */
export function startOptions(args: readonly string[]): StartOptions {
  const { values } = parseArgs({
    args: [...args],
    options: { book: { type: 'string' }, port: { type: 'string' }, listen: { type: 'string' } },
  });
  const port = Number(values.port ?? PORT);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`port must be a whole number from 0 to 65535, got ${values.port}`);
  }
  if (values.book !== undefined && !values.book.toLowerCase().endsWith('.xlsx')) {
    throw new Error(`book must be an .xlsx file, got ${values.book}`);
  }
  return {
    book: values.book ?? DEMO_BOOK,
    fill: values.book === undefined ? 'demo' : 'layout',
    port,
    address: values.listen ?? '127.0.0.1',
  };
}
