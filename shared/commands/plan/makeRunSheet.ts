import { nextRunId } from '../../log/runChoices.ts';
import { statusAfterPlanning } from '../../log/statusAfterLogging.ts';
import { runSheetCells } from '../../paper/runSheet/runSheetCells.ts';
import { runSheetDocument } from '../../paper/runSheet/runSheetDocument.ts';
import { isRefused, writeCommand } from '../command.ts';
import { orderInBook } from '../orderInBook.ts';
import type { Write } from '../write.ts';
import { DETAIL_TABLES, ORDER_FIELDS, planOfOrder } from './planOfOrder.ts';

/** Lays out the sheet *Run sheet* for an order, shows it, and moves the order on to planned. */
export const makeRunSheet = writeCommand<'makeRunSheet', (typeof DETAIL_TABLES)[number]>({
  payload: ORDER_FIELDS,
  tables: DETAIL_TABLES,
  decide: (asked, book, context) => {
    const row = orderInBook(book, asked.order);
    if (isRefused(row)) return row;
    const plan = planOfOrder(book, asked);
    if (isRefused(plan)) return plan;
    const runId = nextRunId(book, plan.order);
    const document = runSheetDocument(plan, { runId, date: plan.pourOn ?? context.today() });
    const { status: before } = row.record;
    const status = statusAfterPlanning(before);
    const moved: readonly Write[] =
      status === before
        ? []
        : [{ kind: 'change', table: 'orders', row: row.row, cells: { status } }];
    return {
      kind: 'decided',
      answer: { kind: 'ok', runId, status: status ?? '' },
      writes: [{ kind: 'run sheet', cells: runSheetCells(document) }, ...moved],
      shows: { sheet: 'Run sheet' },
    };
  },
});
