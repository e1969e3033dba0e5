import type { ExportName } from '../../shared/money/books/exportTable.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { csvText } from '../page/csvText.ts';
import { download } from '../page/download.ts';
import type { Store } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Shows sales, costs and taxes by month and quarter. */
export async function openBooks(store: Store): Promise<void> {
  const books = await work(store, 'Reading the books…', 'readBooks', {});
  if (books === undefined) return;
  const text = books.months.length === 0 ? 'Books read: no sale yet.' : 'Books read.';
  store.set({ view: { kind: 'books', books }, notice: done(text) });
}

/** Freezes the figures of a month. */
export async function closeTheMonth(store: Store, month: string): Promise<void> {
  const payload = { month, who: store.get().who };
  const books = await work(store, `Closing ${month}…`, 'closeMonth', payload);
  if (books === undefined) return;
  const text =
    books.closed === 'now'
      ? `${month} is closed: Closed months keeps its figures.`
      : `${month} was closed already, so nothing was written.`;
  store.set({ view: { kind: 'books', books }, notice: done(text) });
}

/** Saves one of the tables as a file on this computer. */
export async function saveExport(store: Store, what: ExportName): Promise<void> {
  const table = await work(store, `Gathering ${what}…`, 'exportRows', { what });
  if (table === undefined) return;
  const name = `${table.fileName}.csv`;
  download(name, csvText(table));
  store.set({ notice: done(`${countText(table.rows.length, 'row')} saved as ${name}.`) });
}

/** Writes the sheet Overview anew. */
export async function refreshOverview(store: Store): Promise<void> {
  const written = await work(store, 'Writing the overview…', 'updateOverview', {});
  if (written === undefined) return;
  store.set({ notice: done(`The sheet ${written.sheet} is up to date.`) });
}
