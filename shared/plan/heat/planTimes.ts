import {
  type PassGap,
  type PourPass,
  passGap,
  passTime,
  pourOffset,
  stopsIn,
} from '../../batch/pourPass.ts';
import type { MoldCourse } from '../../heat/solver/moldCourse.ts';
import type { SolvedLayer } from '../../heat/solver/solvedLayer.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { durationText, rounded, temperatureText } from '../../words/quantityText.ts';
import type { LayerPlan, LayerWindow } from '../planTypes.ts';
import type { HeatFigures } from './heatFigures.ts';
import { type Filling, FOLLOWED, layerHeat } from './layerHeat.ts';

export type LayerTimes = Pick<LayerPlan, 'openTime' | 'window' | 'joint' | 'run'>;

/** What the times of a round follow from. */
export interface TimedRound {
  /** The mold from the first pour on */
  readonly course: MoldCourse;
  readonly figures: HeatFigures;
  /** One per layer, in the order they are poured */
  readonly passes: readonly PourPass[];
  readonly effort: 'exact' | 'quick';
}

/** An earliest moment is kept to the next five seconds, as it is told. */
const EARLIEST_STEP = 5;

/**
 * Open time, window, timing and joint of every layer of a round. Each layer follows as soon as the one below is whole in all
 * cavities, firm in each, and the cup is changed; joints are those of the cavity that waits longest.
 */
export function planTimes(
  filling: Filling,
  round: TimedRound,
  system: UnitSystem,
): readonly LayerTimes[] {
  const gaps = gapsOf(filling, round);
  const solved = layerHeat(filling, { ...round, pouredAt: pourMoments(gaps) }).layers;
  let firstAt = 0;
  return filling.layers.map((_, index) => {
    const own = solved[index];
    const below = solved[index - 1];
    const gap = gaps[index - 1];
    const pass = round.passes[index];
    firstAt += gap?.start ?? 0;
    const wait = gap && { wait: { shortest: gap.shortest, longest: gap.longest } };
    const window = below && { window: windowOn(below, round.figures, system) };
    const joint = below?.joint && { joint: jointOf(below.joint) };
    return {
      run: { ...runOf(pass, firstAt), ...wait },
      openTime: openOf(own),
      ...window,
      ...joint,
    };
  });
}

/** When each layer lands in the cavity that waits longest, from its first pour [s]. */
export function pourMoments(gaps: readonly Pick<PassGap, 'longest'>[]): readonly number[] {
  const moments = [0];
  let at = 0;
  for (const { longest } of gaps) {
    at += longest;
    moments.push(at);
  }
  return moments;
}

/** From each layer to the next. */
function gapsOf(filling: Filling, round: TimedRound): readonly PassGap[] {
  const gaps: PassGap[] = [];
  round.passes.slice(1).forEach((above, index) => {
    const below = round.passes[index];
    const solved = layerHeat(filling, { ...round, pouredAt: pourMoments(gaps) }).layers[index];
    if (below && solved) gaps.push(passGap(below, above, earliestOf(solved)));
  });
  return gaps;
}

/** A layer that is never firm is not waited for: its window says that it has none. */
function earliestOf({ earliest }: SolvedLayer): number {
  return earliest.kind === 'seconds' ? rounded(earliest.seconds, EARLIEST_STEP, 'up') : 0;
}

function runOf(pass: PourPass | undefined, firstAt: number): LayerPlan['run'] {
  if (pass === undefined) return { firstAt, lastAt: firstAt, passTime: 0, stops: 0 };
  const lastAt = firstAt + pourOffset(pass, pass.cavities - 1);
  return { firstAt, lastAt, passTime: passTime(pass), stops: stopsIn(pass) };
}

function jointOf({
  contactTemperature,
  secondsAboveBond,
  verdict,
}: Required<SolvedLayer>['joint']) {
  return { contactTemperature, secondsAboveBond, verdict };
}

function openOf(solved: SolvedLayer | undefined): LayerPlan['openTime'] {
  if (solved?.open.kind === 'seconds') return solved.open;
  return solved?.open.kind === 'sets at once'
    ? { kind: 'seconds', seconds: 0 }
    : { kind: 'stays open' };
}

function windowOn(below: SolvedLayer, figures: HeatFigures, system: UnitSystem): LayerWindow {
  const { earliest, latest, verdict, surfaceNeeded } = below;
  const start = earliest.kind === 'seconds' ? earliest.seconds : 0;
  if (verdict === 'never firm')
    return {
      kind: 'none',
      why: 'stays soft',
      because: `even ${durationText(FOLLOWED)} later its surface is above the ${temperatureText(figures.firmTemperature, system)} at which it carries the next layer`,
    };
  if (verdict === 'too late from the start')
    return {
      kind: 'none',
      why: 'too cool',
      because: `even fresh, its surface is below the ${temperatureText(surfaceNeeded, system)} that the next pour needs to bond`,
    };
  if (latest.kind !== 'seconds') return { kind: 'from', earliest: start };
  if (verdict === 'open') return { kind: 'between', earliest: start, latest: latest.seconds };
  return {
    kind: 'none',
    why: 'too cool',
    because: `it stops bonding after ${durationText(latest.seconds, 'down')}, before it is firm at ${durationText(start, 'up')}`,
  };
}
