import { nameKey } from '../../book/bookIndex.ts';
import { individualsChart } from '../../quality/charts/individualsChart.ts';
import { SETTLED } from '../../quality/charts/pChart.ts';
import type { UnitSystem } from '../../units/measures.ts';
import type { ControlChart } from './controlChart.ts';
import { inScope, type LoggedRound, namesOf } from './loggedRounds.ts';
import { MOST_POINTS } from './shareChart.ts';
import { ruleName, signalText } from './signalText.ts';

const MEANING = { high: 'heavier than usual', low: 'lighter than usual' } as const;

/** Pieces of one mold, weighed one by one: a chart over several molds would show the molds. */
export function weightChart(
  all: readonly LoggedRound[],
  { mold, system }: { mold: string; system: UnitSystem },
): ControlChart | undefined {
  const own = all.filter((round) => nameKey(round.mold) === nameKey(mold));
  const weighed = own
    .flatMap(({ label, weights }) => weights.map((value) => ({ label, value })))
    .slice(-MOST_POINTS);
  const chart = individualsChart(weighed.map(({ value }) => value));
  if (chart.kind === 'no chart') return undefined;
  const labels = weighed.map(({ label }) => label);
  return {
    kind: 'weight-chart',
    title: `Piece weight, ${mold}`,
    system,
    each: 'piece',
    center: chart.center,
    points: weighed.map(({ label, value }) => ({
      label,
      value,
      lower: Math.max(0, chart.lower),
      upper: chart.upper,
    })),
    signals: [
      ...chart.signals.map((signal) => ({
        rule: ruleName(signal),
        text: signalText(signal, labels, MEANING),
        from: signal.from,
        to: signal.to,
      })),
      ...chart.jumps.map((at) => ({
        rule: 'a jump',
        text: `${labels[at] ?? ''}: jumped from the piece before, its range above 3.267 times the mean range`,
        from: at,
        to: at,
      })),
    ],
    isProvisional: weighed.length < SETTLED,
    ranges: { values: chart.ranges, mean: chart.meanRange, limit: chart.rangeLimit },
  };
}

/** Of the molds with enough weighed pieces for a chart the one that was weighed last, which is shown where none is chosen. */
export function lastWeighed(rounds: readonly LoggedRound[]): string | undefined {
  const weighed = rounds.filter(({ weights }) => weights.length > 0);
  return namesOf([...weighed].reverse(), 'mold').find(
    (mold) => inScope(weighed, { mold }).flatMap(({ weights }) => weights).length >= 2,
  );
}
