import type { Book } from '../../book/book.ts';
import type { Refused } from '../../errors/refuse.ts';
import { runSheetDocument } from '../../paper/runSheet/runSheetDocument.ts';
import type { RunSheetDocument } from '../../paper/runSheet/runSheetTypes.ts';
import { type Context, decided, isRefused, readCommand, showCommand } from '../command.ts';
import type { PayloadOf } from '../commandTypes.ts';
import { DETAIL_TABLES, planOfOrder, RUN_FIELDS } from './planOfOrder.ts';

/** The run sheet of an order as the dialog draws it. */
export const runSheetDocumentFor = readCommand<
  'runSheetDocumentFor',
  (typeof DETAIL_TABLES)[number]
>({
  payload: RUN_FIELDS,
  tables: DETAIL_TABLES,
  answer: (asked, book, context) => {
    const document = documentOf(asked, book, context);
    return isRefused(document) ? document : { kind: 'ok', document };
  },
});

/** Opens the dialog that shows and prints a run sheet, with the sheet. */
export const printRunSheet = showCommand<'printRunSheet', (typeof DETAIL_TABLES)[number]>({
  payload: RUN_FIELDS,
  tables: DETAIL_TABLES,
  decide: (asked, book, context) => {
    const document = documentOf(asked, book, context);
    if (isRefused(document)) return document;
    const { runId } = asked;
    const answer = { kind: 'ok', document };
    return decided(
      { kind: 'ok', runId },
      { shows: { dialog: 'RunSheet', title: `Run sheet ${runId}`, request: asked, answer } },
    );
  },
});

function documentOf(
  asked: PayloadOf<'runSheetDocumentFor'>,
  book: Book<(typeof DETAIL_TABLES)[number]>,
  context: Context,
): RunSheetDocument | Refused {
  const plan = planOfOrder(book, asked);
  if (isRefused(plan)) return plan;
  return runSheetDocument(plan, { runId: asked.runId, date: plan.pourOn ?? context.today() });
}
