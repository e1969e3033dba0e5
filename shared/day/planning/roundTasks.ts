import type { Link } from '../../schedule/schedulingTypes.ts';
import type { DayPart, PlannedHold, PlannedTask } from './dayPart.ts';
import { ovenModes, personModes, plateModes, resourceId } from './dayResources.ts';
import { type DayWork, dayTask } from './dayTask.ts';
import { layerWait } from './layerWait.ts';
import type { PlannedRun, RunLayer } from './plannedRun.ts';
import type { DayOrder, ShopDay } from './shopDay.ts';

/** Pieces in a round, 1 for the first; the last may be short. */
export function piecesIn({ pieces }: PlannedRun, round: number): number {
  return Math.min(pieces.perRound, pieces.toPour - (round - 1) * pieces.perRound);
}

/**
 * One filling of the molds: onto the plate, heat, cook and pour every layer, top off, cool, demold, inspect. The plate is taken
 * until the round is topped off, the molds until they are empty, the pourer from the first pour to the top-off, a layer's
 * cups from the oven to the end of its pass.
 */
export function roundTasks(day: ShopDay, order: DayOrder, round: number): DayPart {
  const { run } = order;
  const { rules } = day;
  const name = (what: DayWork, layer?: string) =>
    dayTask(run.order, what, { round, ...(layer !== undefined && { layer }) });
  const heatUp = run.plate.kind === 'reachable' ? Math.ceil(run.plate.heatUp) : 0;
  const spare = run.plate.kind === 'reachable' ? Math.ceil(run.plate.readyWait) : 0;
  const atHand = Math.ceil(rules.heatAttended * heatUp);
  const finishing = run.work.finishing * (piecesIn(run, round) / run.pieces.toPour);
  const set = name('set on the plate');
  const heat = name('heat');
  const pours = run.layers.map(({ layer }) => name('pour', layer));
  const cooks = run.layers.map(({ layer }) => name('cook', layer));
  const topOff = name('top off');
  const cool = name('cool');
  const demold = name('demold');
  const inspect = name('inspect');
  const tasks: PlannedTask[] = [
    { ...set, duration: atHand, uses: [personModes(day, 'any')] },
    { ...heat, duration: heatUp - atHand },
    ...run.layers.map((layer, place) => ({
      ...(cooks[place] ?? set),
      duration: cookDuration(day, run, layer),
      uses: [ovenModes(day), personModes(day, 'cook', rules.cookAttended)],
    })),
    ...run.layers.map((layer, place) => ({
      ...(pours[place] ?? set),
      duration: Math.ceil(layer.run.passTime),
    })),
    { ...topOff, duration: Math.ceil(rules.topOff * piecesIn(run, round)) },
    { ...cool, duration: Math.ceil(run.coolTime) },
    {
      ...demold,
      duration: Math.ceil(finishing * rules.demoldShare),
      uses: [personModes(day, 'finish')],
    },
    {
      ...inspect,
      duration: Math.ceil(finishing * rules.inspectShare),
      uses: [personModes(day, 'finish')],
    },
  ];
  const [first = heat] = pours;
  const last = pours[pours.length - 1] ?? heat;
  const links: Link[] = [
    { before: set.id, after: heat.id, most: 0 },
    { before: heat.id, after: first.id, least: spare, most: spare + rules.hotWait },
    ...cooks.map(({ id }, place) => ({
      before: id,
      after: pours[place]?.id ?? first.id,
      most: rules.cupWait,
    })),
    ...layerLinks(
      run,
      pours.map(({ id }) => id),
    ),
    { before: last.id, after: topOff.id, most: 0 },
    { before: topOff.id, after: cool.id, most: 0 },
    { before: cool.id, after: demold.id },
    { before: demold.id, after: inspect.id },
  ];
  const what = `${run.order}, round ${round}`;
  const mold = { resource: resourceId('mold', run.mold), amount: run.moldsInUse };
  const holds: Omit<PlannedHold, 'order' | 'round'>[] = [
    ...run.layers.map((layer, place) => ({
      id: `cups of ${layer.layer} for ${what}`,
      first: cooks[place]?.id ?? first.id,
      last: pours[place]?.id ?? last.id,
      modes: [[{ resource: resourceId('cups'), amount: cupsIn(run, layer) }]],
    })),
    {
      id: `pourer for ${what}`,
      first: first.id,
      last: topOff.id,
      modes: personModes(day, 'pour'),
    },
    { id: `plate for ${what}`, first: set.id, last: topOff.id, modes: plateModes(day, order) },
    { id: `molds for ${what}`, first: set.id, last: demold.id, modes: [[mold]] },
  ];
  return { tasks, links, holds: holds.map((hold) => ({ ...hold, order: run.order, round })) };
}

/** Cups of a layer that are heated for one round. */
export function cupsIn({ pieces }: PlannedRun, { cups }: RunLayer): number {
  return Math.max(1, Math.ceil(cups / pieces.rounds));
}

/** A cup that stood between two rounds takes a whole cook; cups go through the oven one after the other. */
function cookDuration({ rules }: ShopDay, run: PlannedRun, layer: RunLayer): number {
  const oneCup = run.cookTime + run.cookBursts * rules.cookRest + rules.stirThrough;
  return Math.ceil(cupsIn(run, layer) * oneCup);
}

/** Hard windows from pass to pass. */
function layerLinks({ layers }: PlannedRun, pours: readonly string[]): readonly Link[] {
  return layers.slice(1).flatMap((above, index): readonly Link[] => {
    const below = layers[index];
    const [before, after] = [pours[index], pours[index + 1]];
    const wait = below && layerWait(below, above);
    if (wait?.kind !== 'wait' || before === undefined || after === undefined) return [];
    const { least, most } = wait;
    return [{ before, after, from: 'start', least, ...(most !== undefined && { most }) }];
  });
}
