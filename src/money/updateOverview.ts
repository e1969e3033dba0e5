import { readPeople } from '../../shared/book/dayBook.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { OverviewWritten } from '../../shared/commands/booksCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { overview } from '../../shared/paper/overview/overview.ts';
import { overviewTab } from '../../shared/paper/overview/overviewTab.ts';
import { readBooksBookNow } from '../platform/readBooksBookNow.ts';
import { today } from '../platform/today.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { readCells } from '../platform/workbook.ts';
import { OVERVIEW, writeOverviewTab } from './writeOverviewTab.ts';

/** Page call: writes the sheet *Overview* anew; takes no payload. */
export function updateOverview(): OverviewWritten | Refused {
  return withDocumentLock(() => {
    const people = readPeople(readCells(TABLES.people.sheet)).rows;
    const tab = overviewTab(overview({ ...readBooksBookNow(), people }, today()));
    return writeOverviewTab(tab) ?? { kind: 'ok', sheet: OVERVIEW };
  });
}
