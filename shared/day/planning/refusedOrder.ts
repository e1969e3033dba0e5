import { personModes, plateModes } from './dayResources.ts';
import { closedWindow } from './layerWait.ts';
import { cupsIn } from './roundTasks.ts';
import { type DayOrder, type ShopDay, SKILLS } from './shopDay.ts';

/** Why an order cannot be planned in this shop on any day; undefined where it can. */
export function refusedOrder(day: ShopDay, order: DayOrder): string | undefined {
  const { run } = order;
  if (run.plate.kind === 'unreachable') return run.plate.because;
  const closed = closedWindow(run);
  if (closed !== undefined) return closed;
  const mold = day.molds.find(({ name }) => name === run.mold);
  if (!mold) return `the shop has no mold ${run.mold}`;
  if (run.moldsInUse > mold.owned)
    return `a round takes ${run.moldsInUse} of ${run.mold}, the shop has ${mold.owned}`;
  if (plateModes(day, order).length === 0)
    return `no plate that it may be heated on holds ${run.moldsInUse} of ${run.mold}`;
  if (day.ovens.length === 0) return 'the shop has no oven';
  const missing = SKILLS.find((skill) => personModes(day, skill).length === 0);
  if (missing) return `nobody is there to ${missing}`;
  const most = Math.max(...run.layers.map((layer) => cupsIn(run, layer)));
  return most > day.cups
    ? `a layer takes ${most} cups at once, the shop has ${day.cups}`
    : undefined;
}
