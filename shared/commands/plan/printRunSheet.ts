import { decided, isRefused, showCommand } from '../command.ts';
import { DETAIL_TABLES, planOfOrder, RUN_FIELDS } from './planOfOrder.ts';

/** Opens the dialog that shows and prints a run sheet. */
export const printRunSheet = showCommand<'printRunSheet', (typeof DETAIL_TABLES)[number]>({
  payload: RUN_FIELDS,
  tables: DETAIL_TABLES,
  decide: (asked, book) => {
    const plan = planOfOrder(book, asked);
    if (isRefused(plan)) return plan;
    const { runId } = asked;
    return decided(
      { kind: 'ok', runId },
      { shows: { dialog: 'RunSheet', title: `Run sheet ${runId}`, request: asked } },
    );
  },
});
