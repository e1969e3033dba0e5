import type { BookIndex } from '../../book/bookIndex.ts';
import { band } from '../../uncertainty/band.ts';
import { quantile } from '../../uncertainty/quantile.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import { courseOf, fixedRun } from '../heat/fixedRun.ts';
import { usualFigures } from '../heat/heatFigures.ts';
import { cavityThicknesses, FOLLOWED, layerHeat } from '../heat/layerHeat.ts';
import { fillingOf } from '../heat/planRound.ts';
import { plateHeat } from '../heat/plateHeat.ts';
import type { OrderPlan } from '../planTypes.ts';
import { type DrawnAnswers, drawnAnswers } from './drawnAnswers.ts';
import type { HeatDetail, LayerBands } from './heatDetail.ts';
import { sampledFigures } from './sampledFigures.ts';

export interface DetailWanted {
  /** Whole, 2 to 2048 */
  readonly draws?: number;
  /** Whole; the same seed gives the same bands */
  readonly seed: number;
  /** Mold tops read of this mold on this plate in heat trials, in order */
  readonly readings?: HeatDetail['readings'];
}

/** From seed to seed the ends of a band then scatter by 1 to 6 % of its width, by 11 % at the end of a long tail. */
const DRAWS = 96;
/** A profile before a pour is taken this long before it lands [s]. */
const BEFORE = 1;

type Bander = (pick: (answers: DrawnAnswers) => number) => LayerBands['open'];

/**
 * How sure the times and temperatures of a plan are, and the curves behind them.
 *
 * Every figure that nobody knows exactly is drawn over its range, each set of draws goes through the very functions of the plan,
 * with its dial setting and its moments of pouring kept: the mold reads its target at the first pour, as the sheet says, and
 * climbs from there as that draw's plate makes it. A band holds nine of ten draws. What the models leave out (oil on a
 * surface, a hot spot of a plate, the person who pours) is in no band.
 *
 * @throws InputError on a number of draws or a seed out of range
 */
export function planDetail(
  index: BookIndex,
  facts: OrderFacts,
  plan: OrderPlan,
  { draws = DRAWS, seed, readings = [] }: DetailWanted,
): HeatDetail {
  const { shop } = index.book;
  const run = fixedRun(facts, plan, shop);
  const filling = fillingOf(facts);
  const figures = usualFigures(facts.plate, shop);
  const usual = plateHeat(facts.mold, facts.plate, shop, {
    ...run.plateSet,
    figures,
    effort: 'exact',
  });
  const moments = usual.samples.map(({ seconds }) => seconds);
  const drawn = sampledFigures(facts.plate, shop, { draws, seed });
  const answers = drawn.figures.map((one) =>
    drawnAnswers(facts, shop, { ...run, figures: one, usual: figures, moments }),
  );
  const bandOf: Bander = (pick) => band(answers.map(pick), drawn.ranks);
  const layers = layerHeat(filling, {
    course: courseOf(run, usual),
    figures,
    pouredAt: run.pouredAt,
    effort: 'exact',
    profileTimes: profileTimes(run.pouredAt),
  });
  return {
    draws,
    seed,
    ...(plan.plate.kind === 'reachable' && {
      heatUp: bandOf(({ heatUp }) => heatUp),
      plateau: bandOf(({ plateau }) => plateau),
    }),
    cupTime: bandOf(({ cupTime }) => cupTime),
    layers: plan.layers.map((_, layer) => layerBands(bandOf, layer, answers)),
    heatCourse: usual.samples.map(({ seconds, plate, top }, sample) => {
      const tops = answers.map((one) => one.tops[sample] ?? top);
      return { seconds, plate, top, low: quantile(tops, 0.05), high: quantile(tops, 0.95) };
    }),
    readings,
    layerCourses: layers.layers.map((layer) => layer.readings),
    profiles: layers.profiles,
    jointHeights: facts.mold.kind === 'open' ? heights(cavityThicknesses(filling)) : [],
  };
}

function layerBands(bandOf: Bander, layer: number, [first]: readonly DrawnAnswers[]): LayerBands {
  const open = bandOf(({ layers }) => layers[layer]?.open ?? Number.NaN);
  const below = first?.layers[layer]?.onBelow;
  if (below === undefined) return { open };
  const onBelow = (key: 'earliest' | 'latest' | 'contact') =>
    bandOf(({ layers }) => layers[layer]?.onBelow?.[key] ?? Number.NaN);
  return {
    open,
    earliest: onBelow('earliest'),
    latest: onBelow('latest'),
    ...(below.contact === undefined ? {} : { contact: onBelow('contact') }),
  };
}

/** Just before each pour on another layer, and the end. */
function profileTimes(pouredAt: readonly number[]): readonly number[] {
  const last = pouredAt[pouredAt.length - 1] ?? 0;
  return [...pouredAt.slice(1).map((time) => time - BEFORE), last + FOLLOWED];
}

/** Tops of layers from their thicknesses, bottom first. */
function heights(thicknesses: readonly number[]): readonly number[] {
  let top = 0;
  return thicknesses.map((thickness) => {
    top += thickness;
    return top;
  });
}
