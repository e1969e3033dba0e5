import { clockField } from '../page/clockField.ts';
import type { Store } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Shows the plan of the row that is selected on the sheet. */
export async function readSelected(store: Store): Promise<void> {
  const answer = await work(store, 'Reading the row…', 'planSelectedOrder', {});
  if (answer === undefined) return;
  const { plan } = answer;
  const firstPour = plan.kind === 'plan' ? clockField(plan.firstPour) : '';
  const name = plan.order === '' ? 'Row' : `Order ${plan.order}`;
  const text = plan.kind === 'plan' ? `${name} read.` : `${name} read: it has no plan yet.`;
  const onShow = { plan, firstPour, sheet: undefined };
  store.set({ view: { kind: 'plan' }, onShow, notice: done(text) });
}

/** Plans the order on show again, at another pour time or after a change of the book. */
export async function planAgain(
  store: Store,
  firstPour = store.get().onShow?.firstPour ?? '',
): Promise<void> {
  const { onShow } = store.get();
  if (onShow === undefined || onShow.plan.order === '') return;
  const { order } = onShow.plan;
  const asked = { ...onShow, firstPour };
  store.follow({ onShow: asked });
  const answer = await work(store, 'Planning…', 'planSelectedOrder', { order, firstPour });
  if (answer === undefined) return;
  const { plan } = answer;
  const notice = done(`Order ${order} planned again.`);
  store.set({ view: { kind: 'plan' }, onShow: { ...asked, plan }, notice });
}

export function showPlan(store: Store): void {
  store.set({ view: { kind: 'plan' }, notice: undefined });
}

/** Back to the order on show, planned with the figures of now. */
export async function returnToPlan(store: Store): Promise<void> {
  const { onShow } = store.get();
  if (onShow === undefined || onShow.plan.order === '') showPlan(store);
  else await planAgain(store);
}
