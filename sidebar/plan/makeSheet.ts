import type { Store } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Makes the run sheet of the order on show, under a new run. */
export async function makeSheet(store: Store): Promise<void> {
  const { onShow } = store.get();
  if (onShow === undefined) return;
  const { plan, firstPour } = onShow;
  const payload = { order: plan.order, firstPour };
  const made = await work(store, 'Making the run sheet…', 'makeRunSheet', payload);
  if (made === undefined) return;
  const notice = done(`Run sheet ${made.runId} is on the sheet Run sheet.`);
  store.set({ onShow: { ...onShow, sheet: { runId: made.runId, of: plan } }, notice });
}

/** Opens the pictures of the plan's heat. */
export async function seeHeat(store: Store): Promise<void> {
  const { onShow } = store.get();
  if (onShow === undefined) return;
  const payload = { order: onShow.plan.order, firstPour: onShow.firstPour };
  const shown = await work(store, 'Opening the pictures…', 'showHeat', payload);
  if (shown === undefined) return;
  store.set({ notice: done(`The heat of order ${shown.order} is open.`) });
}

/** Opens the run sheet that was made last as a page to print. */
export async function printSheet(store: Store): Promise<void> {
  const { onShow } = store.get();
  if (onShow?.sheet === undefined) return;
  const { plan, firstPour, sheet } = onShow;
  const payload = { order: plan.order, runId: sheet.runId, firstPour };
  const shown = await work(store, 'Opening the print page…', 'printRunSheet', payload);
  if (shown === undefined) return;
  store.set({ notice: done(`The print page of ${shown.runId} is open.`) });
}
