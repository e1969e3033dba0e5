import type { RuleKey, Signal } from '../../quality/charts/runSignals.ts';

/** Each rule in a few words. */
const RULES: Readonly<Record<RuleKey, string>> = {
  limit: 'beyond its limit',
  twoOfThree: 'two of three far out',
  fourOfFive: 'four of five off center',
  eightInRow: 'eight in a row on one side',
};

/** Each rule in full, for one side. */
const FULL: Readonly<Record<RuleKey, (side: string) => string>> = {
  limit: (side) => `${side} the limit of three standard deviations`,
  twoOfThree: (side) =>
    `two of three in a row more than two standard deviations ${side} the center line`,
  fourOfFive: (side) =>
    `four of five in a row more than one standard deviation ${side} the center line`,
  eightInRow: (side) => `eight or more in a row ${side} the center line`,
};

export function ruleName({ rule }: Signal): string {
  return RULES[rule];
}

/**
 * A signal as a sentence without its full stop: where it began, which rule, and how often luck alone does that.
 * @param labels - of the points
 * @param meaning - what a signal on this side means, for shares of bad pieces
 */
export function signalText(
  { rule, side, from, to, chance }: Signal,
  labels: readonly string[],
  meaning: Readonly<Record<Signal['side'], string>>,
): string {
  const first = labels[from] ?? '';
  const last = labels[to] ?? '';
  const where = from === to ? first : `from ${first} to ${last}`;
  const rarity = `luck alone: once in ${Math.round(oneIn(chance)).toLocaleString('en-US')}`;
  return `${where}: ${meaning[side]}, ${FULL[rule](side === 'high' ? 'above' : 'below')} (${rarity})`;
}

/** Two digits say enough of how rare luck is; past a million it is all the same. */
function oneIn(chance: number): number {
  if (chance < 1e-6) return 1_000_000;
  return Number((1 / chance).toPrecision(2));
}
