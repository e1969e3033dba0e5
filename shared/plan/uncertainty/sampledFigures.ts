import type { Shop } from '../../book/settings/settings.ts';
import type { DrawnRanks } from '../../uncertainty/band.ts';
import { drawnValue } from '../../uncertainty/drawnValue.ts';
import { quasiRandom } from '../../uncertainty/quasiRandom.ts';
import { ranks } from '../../uncertainty/rankCorrelation.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import type { HeatFigures } from '../heat/heatFigures.ts';
import { figureSpreads } from './figureSpreads.ts';
import { UNCERTAIN_FIGURES } from './uncertainFigures.ts';

export interface SampledFigures {
  /** One set of figures per draw */
  readonly figures: readonly HeatFigures[];
  readonly ranks: DrawnRanks<keyof HeatFigures>;
}

/**
 * Sets of figures that might all be true, evenly over what is thought possible; each figure on its own, as if none told anything of another.
 * @param draws - whole, 2 to 2048
 * @param seed - whole; the same seed draws the same
 * @throws InputError on a number of draws or a seed out of range
 */
export function sampledFigures(
  plate: PlateFacts,
  shop: Shop,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): SampledFigures {
  const spreads = figureSpreads(plate, shop);
  const keys = Object.keys(UNCERTAIN_FIGURES) as (keyof HeatFigures)[]; // the table has exactly these keys
  const figures = quasiRandom(draws, keys.length, seed).map((point) => {
    const drawn = keys.map((key, axis) => [key, drawnValue(point[axis] ?? 0.5, spreads[key])]);
    return Object.fromEntries(drawn) as Record<keyof HeatFigures, number>; // every key was just drawn
  });
  return {
    figures,
    ranks: new Map(keys.map((key) => [key, ranks(figures.map((drawn) => drawn[key]))])),
  };
}
