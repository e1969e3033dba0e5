import { runSheetDocument } from '../../paper/runSheet/runSheetDocument.ts';
import { isRefused, readCommand } from '../command.ts';
import { DETAIL_TABLES, planOfOrder, RUN_FIELDS } from './planOfOrder.ts';

/** The run sheet of an order as the dialog draws it. */
export const runSheetDocumentFor = readCommand<
  'runSheetDocumentFor',
  (typeof DETAIL_TABLES)[number]
>({
  payload: RUN_FIELDS,
  tables: DETAIL_TABLES,
  answer: (asked, book, context) => {
    const plan = planOfOrder(book, asked);
    if (isRefused(plan)) return plan;
    const run = { runId: asked.runId, date: plan.pourOn ?? context.today() };
    return { kind: 'ok', document: runSheetDocument(plan, run) };
  },
});
