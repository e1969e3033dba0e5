import type { BookIndex } from '../../book/bookIndex.ts';
import type { SolvedLayer } from '../../heat/solver/solvedLayer.ts';
import { plateOutcome } from '../../plan/computePlan.ts';
import type { OrderFacts } from '../../plan/facts/findOrder.ts';
import { usualFigures } from '../../plan/heat/heatFigures.ts';
import { layerHeat } from '../../plan/heat/layerHeat.ts';
import { fillingOf } from '../../plan/heat/planRound.ts';
import type { LogReadings } from './logReadings.ts';
import { moldTopRise } from './moldTopRise.ts';

/**
 * The layers of a logged round from the layer solver, poured as the row says: its mold top, cups and gaps, the shop's usual
 * figures for the rest, the mold going on as the plan's climb does. As far up as the readings reach without a blank.
 * @returns one per layer solved, the lowest first; empty without a mold top or a first cup
 */
export function runHeat(
  index: BookIndex,
  facts: OrderFacts,
  { moldTop, pours, gaps }: LogReadings,
): readonly SolvedLayer[] {
  const known = whole(pours);
  const waits = whole(gaps);
  const count = Math.min(known.length, waits.length + 1);
  if (moldTop === undefined || count === 0) return [];
  const filling = fillingOf(facts);
  let at = 0;
  const pouredAt = known.slice(0, count).map((_, layer) => {
    at += layer === 0 ? 0 : (waits[layer - 1] ?? 0);
    return at;
  });
  const layers = filling.layers.map((layer, place) => ({
    ...layer,
    pourTemperature: known[place] ?? layer.pourTemperature,
  }));
  return layerHeat(
    { ...filling, layers },
    {
      course: moldTopRise(plateOutcome(index, facts).climb, moldTop),
      figures: usualFigures(facts.plate, index.book.shop),
      pouredAt,
      effort: 'exact',
    },
  ).layers;
}

/** Up to the first blank. */
function whole(values: readonly (number | undefined)[]): readonly number[] {
  const blank = values.indexOf(undefined);
  return (blank < 0 ? values : values.slice(0, blank)).filter((value) => value !== undefined);
}
