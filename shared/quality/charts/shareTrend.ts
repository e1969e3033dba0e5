import { requireNumber } from '../../errors/requireNumber.ts';
import type { Sample } from './pChart.ts';

/** How sure a trend must be: luck alone gives a steeper one, either way, once in twenty. */
const SURE = 1.96;

export interface ShareTrend {
  /** Standard deviations of the slope of bad pieces from none; negative when fewer and fewer are bad. */
  readonly z: number;
  readonly verdict: 'better' | 'worse' | 'no clear change';
}

/**
 * Whether the share of bad pieces rises or falls over equal periods (Cochran-Armitage test for trend).
 *
 * z = sum t (bad - poured p) / sqrt(p (1 - p) sum poured (t - mean t)^2), p the share of all, mean t weighted by poured.
 * @param periods - in order, poured whole, >= 0; those with nothing poured count for nothing but the time they take
 * @returns undefined where fewer than three periods have pieces, or all pieces are alike
 * @throws InputError on a figure out of range
 * @source ARMITAGE1955
 */
export function shareTrend(periods: readonly Sample[]): ShareTrend | undefined {
  for (const { poured, bad } of periods) {
    requireNumber(poured, 'poured', { atLeast: 0, whole: true });
    requireNumber(bad, 'bad', { atLeast: 0, atMost: poured, whole: true });
  }
  const counted = periods
    .map((period, time) => ({ ...period, time }))
    .filter(({ poured }) => poured > 0);
  const all = total(counted, ({ poured }) => poured);
  const share = total(counted, ({ bad }) => bad) / all;
  if (counted.length < 3 || share === 0 || share === 1) return undefined;
  const mean = total(counted, ({ poured, time }) => poured * time) / all;
  const slope = total(counted, ({ poured, bad, time }) => (time - mean) * (bad - poured * share));
  const spread = total(counted, ({ poured, time }) => poured * (time - mean) ** 2);
  const z = slope / Math.sqrt(share * (1 - share) * spread);
  return { z, verdict: z > SURE ? 'worse' : z < -SURE ? 'better' : 'no clear change' };
}

function total<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + of(item), 0);
}
