import { BOOKS_TABLES } from '../../book/book.ts';
import { overview } from '../../paper/overview/overview.ts';
import { overviewTab } from '../../paper/overview/overviewTab.ts';
import { decided, writeCommand } from '../command.ts';

const TABLES_READ = [...BOOKS_TABLES, 'people'] as const;

/** Writes the sheet *Overview* anew. */
export const updateOverview = writeCommand<'updateOverview', (typeof TABLES_READ)[number]>({
  payload: {},
  tables: TABLES_READ,
  decide: (_asked, book, context) =>
    decided(
      { kind: 'ok', sheet: 'Overview' },
      { writes: [{ kind: 'overview', tab: overviewTab(overview(book, context.today())) }] },
    ),
});
