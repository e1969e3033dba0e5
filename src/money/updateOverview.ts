import { BOOKS_TABLES } from '../../shared/book/book.ts';
import type { OverviewWritten } from '../../shared/commands/booksCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { overview } from '../../shared/paper/overview/overview.ts';
import { overviewTab } from '../../shared/paper/overview/overviewTab.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { OVERVIEW, writeOverviewTab } from './writeOverviewTab.ts';

/** Page call: writes the sheet *Overview* anew; takes no payload. */
export function updateOverview(): OverviewWritten | Refused {
  return withDocumentLock(() => {
    const book = readBookNow([...BOOKS_TABLES, 'people'] as const);
    const tab = overviewTab(overview(book, today()));
    return writeOverviewTab(tab) ?? { kind: 'ok', sheet: OVERVIEW };
  });
}
