import type { DayEntry, OrderOutcome } from '../planning/dayTimetable.ts';
import { layerWait } from '../planning/layerWait.ts';
import type { RunFacts } from './taskText.ts';

/**
 * Latest moment of a task: of a layer, its window after the planned start of the layer below; of packing, the due date.
 * @param entries of the same plan
 * @returns [s]; undefined where nothing but the plan sets a time
 */
export function latestMoment(
  entry: DayEntry,
  entries: readonly DayEntry[],
  facts: RunFacts | undefined,
  outcome: OrderOutcome | undefined,
): number | undefined {
  if (entry.what === 'pack') return outcome?.due;
  if (entry.what !== 'pour' || facts === undefined) return undefined;
  const place = facts.layers.findIndex(({ layer }) => layer === entry.layer);
  const [below, above] = [facts.layers[place - 1], facts.layers[place]];
  if (below === undefined || above === undefined) return undefined;
  const wait = layerWait(below, above);
  const poured = entries.find(
    ({ order, what, round, layer }) =>
      order === entry.order && what === 'pour' && round === entry.round && layer === below.layer,
  );
  if (poured === undefined || wait.kind !== 'wait' || wait.most === undefined) return undefined;
  return poured.from + wait.most;
}
