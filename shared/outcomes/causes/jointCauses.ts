import { durationText, temperatureText } from '../../words/quantityText.ts';
import { temperatureDifferenceText } from '../../words/temperatureDifferenceText.ts';
import type { CauseRule } from './causeRule.ts';
import { PROBE } from './moldCauses.ts';
import type { JointFigures, RunFigures } from './runFigures.ts';

/** How closely a bond temperature is known, short of the 120 to 130 °C at which layers poured hot meet [K]. @source HEATSTUDY */
const BOND_SPAN = 3;
/** The log's gaps are kept to a tenth of a minute [s]. */
const GAP_READING = 6;
/** Share of an earliest pour that is doubt: a cup or a mold top a few degrees off its reading moves it by as much. */
const EARLIEST_DOUBT = 1 / 3;
/** A warmer cup is worth a word from here on [K]. */
const CUP_GAIN = 2;

/** Causes that a joint shows: how warm its faces met, and whether the layer below carried the next. */
export const JOINT_CAUSES: readonly CauseRule[] = [
  {
    cause: 'layer below too cool to bond',
    makes: { peeledLayer: 1, coldCrack: 0.9 },
    source: 'INTERFACEBOND',
    speaks: (run) => {
      const coolest = coolestSuspect(run);
      if (coolest === undefined) return undefined;
      const { above, below, surface, contactTemperature } = coolest;
      const short = run.bondTemperature - contactTemperature;
      if (short <= -BOND_SPAN) return undefined;
      const at = `the ${above} reached the ${below} at ${temperatureText(surface, run.system)} surface`;
      return {
        excess: 1 + short / BOND_SPAN,
        because: `${at}, ${shortWords(run, coolest)}`,
        cure: bondCure(run, coolest),
      };
    },
  },
  {
    cause: 'next layer poured before the one below was firm',
    makes: { unevenLine: 1, bleed: 0.9 },
    source: 'TRADE',
    speaks: (run) => {
      const early = run.joints.find((joint) => isEarly(joint, run));
      if (early === undefined) return undefined;
      const { above, below, gap, earliest } = early;
      if (earliest.kind !== 'seconds')
        return {
          excess: 2,
          because: `the ${below} was not firm at any moment on so hot a mold, and the ${above} ran into it`,
          cure: 'pour in a cooler mold',
        };
      return {
        excess: (1 - gap / earliest.seconds) / EARLIEST_DOUBT,
        because: `the ${above} followed after ${durationText(gap)}, and the ${below} carries a layer only after ${durationText(earliest.seconds, 'up')}`,
        cure: `wait ${durationText(earliest.seconds, 'up')} after the ${below}, and pour low and slow`,
      };
    },
  },
];

/** The coolest joint that is not known to have torn through. */
function coolestSuspect({ joints }: RunFigures): JointFigures | undefined {
  return joints
    .filter(({ tear }) => tear !== 'tears through')
    .sort((one, other) => one.contactTemperature - other.contactTemperature)[0];
}

function shortWords(
  { bondTemperature, system }: RunFigures,
  { surface, surfaceNeeded, contactTemperature }: JointFigures,
): string {
  const off = temperatureDifferenceText(Math.abs(surfaceNeeded - surface), system);
  return contactTemperature < bondTemperature
    ? `${off} under the threshold of ${temperatureText(surfaceNeeded, system)}: likely peel`
    : `only ${off} above the threshold of ${temperatureText(surfaceNeeded, system)}, which is not known more closely than that`;
}

/** What would have brought the faces together warmer, each by itself as far as the record tells. */
function bondCure(run: RunFigures, joint: JointFigures): string {
  const { moldTop, topTarget, system } = run;
  const cures = [
    ...(moldTop !== undefined && moldTop < topTarget - PROBE
      ? [`heat the mold until its top reads ${temperatureText(topTarget, system, 'up')}`]
      : []),
    ...soonerCure(joint),
    ...hotterCure(run, joint),
  ];
  return cures.length === 0
    ? 'pour that layer hotter, or keep the mold covered until then'
    : cures.join(', or ');
}

/** Within the window of the layer below, where the pour came after it; else as soon as that layer carries another. */
function soonerCure({ above, below, latest, earliest, gap }: JointFigures): readonly string[] {
  if (earliest.kind === 'never firm' || latest.kind === 'too late from the start') return [];
  const start = earliest.kind === 'seconds' ? earliest.seconds : 0;
  if (latest.kind === 'seconds' && latest.seconds >= start && latest.seconds < gap)
    return [`pour the ${above} within ${durationText(latest.seconds, 'down')} of the ${below}`];
  if (gap <= start + 2 * GAP_READING) return [];
  return [
    `pour the ${above} as soon as the ${below} carries it, ${durationText(start, 'up')} after it`,
  ];
}

/** A cup warmer by so much warms the contact by half of that. */
function hotterCure(run: RunFigures, joint: JointFigures): readonly string[] {
  const upper = run.layers.find(({ name }) => name === joint.above);
  const short = run.bondTemperature - joint.contactTemperature;
  if (upper?.pour === undefined || (upper.planned - upper.pour) / 2 < Math.max(short, CUP_GAIN))
    return [];
  return [`have its cup at ${temperatureText(upper.planned, run.system)}`];
}

/** A pour that kept the run sheet's window is not blamed, as long as the mold was no hotter than that window was for. */
function isEarly(joint: JointFigures, { moldTop, topTarget }: RunFigures): boolean {
  const { gap, earliest, plannedEarliest } = joint;
  if (earliest.kind === 'never firm') return true;
  if (earliest.kind !== 'seconds') return false;
  const isHotter = moldTop === undefined || moldTop > topTarget + PROBE;
  const allowed = isHotter ? undefined : plannedEarliest;
  const limit = Math.min(earliest.seconds * (1 - EARLIEST_DOUBT), allowed ?? earliest.seconds);
  return gap + GAP_READING / 2 < limit;
}
