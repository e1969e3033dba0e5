import { durationText, temperatureText } from '../../words/quantityText.ts';
import { temperatureDifferenceText } from '../../words/temperatureDifferenceText.ts';
import type { CauseRule } from './causeRule.ts';
import type { RunFigures } from './runFigures.ts';

/** What a surface probe leaves open [K]. */
export const PROBE = 3;
/** A mold cooler or hotter than it was to be by this is as much doubt as these rules have [K]. */
const MOLD_SPAN = 8;
/** A layer sets in less than this before it has found its level [s]. Common practice, no source. */
const LEVELING = 30;

/** Causes that the mold top shows. */
export const MOLD_CAUSES: readonly CauseRule[] = [
  {
    cause: 'mold too cool at the first pour',
    makes: {
      coldCrack: 1,
      unevenLine: 0.7,
      shortFill: 0.6,
      trappedAir: 0.6,
      // At most 1: a joint below its threshold comes first for a peel.
      peeledLayer: 0.25,
      dimple: 0.4,
    },
    source: 'CASTINGATLAS',
    speaks: ({ moldTop, topTarget, system }) => {
      if (moldTop === undefined || moldTop >= topTarget - PROBE) return undefined;
      return {
        excess: (topTarget - moldTop) / MOLD_SPAN,
        because: `the mold top read ${temperatureText(moldTop, system)} at the first pour, ${temperatureDifferenceText(topTarget - moldTop, system)} below what it must read`,
        cure: `wait until the mold top itself reads ${temperatureText(topTarget, system, 'up')}, whatever the dial says`,
      };
    },
  },
  {
    cause: 'mold hotter than the plan takes it',
    makes: { flash: 0.7, dimple: 0.6, scorch: 0.3, unevenLine: 0.3, bleed: 0.3 },
    source: 'TRADE',
    speaks: ({ moldTop, hottestTop, system }) => {
      if (moldTop === undefined || moldTop <= hottestTop + PROBE) return undefined;
      return {
        excess: (moldTop - hottestTop) / MOLD_SPAN,
        because: `the mold top read ${temperatureText(moldTop, system)}, ${temperatureDifferenceText(moldTop - hottestTop, system)} above where the plate was to bring it`,
        cure: `turn the plate down until the mold top reads ${temperatureText(hottestTop, system, 'down')} or less`,
      };
    },
  },
  {
    cause: 'layer set before it found its level',
    makes: { unevenLine: 1, dimple: 0.8, shortFill: 0.5, coldCrack: 0.4 },
    source: 'TRADE',
    speaks: (run) => {
      const first = soonestSet(run);
      if (first === undefined || first.seconds >= LEVELING) return undefined;
      const hotter =
        run.moldTop === undefined || run.moldTop < run.topTarget
          ? `pour once the mold top reads ${temperatureText(run.topTarget, run.system, 'up')}`
          : 'cover the mold, or fill fewer cavities at a time';
      return {
        excess: ((LEVELING - first.seconds) / LEVELING) * 3,
        because: `the ${first.name} no longer moved after ${durationText(first.seconds)}`,
        cure: `${hotter}, so that it stays open long enough to level`,
      };
    },
  },
];

function soonestSet({ layers }: RunFigures) {
  const times = layers.flatMap(({ name, open }) => {
    if (open === undefined || open.kind === 'stays open') return [];
    return [{ name, seconds: open.kind === 'seconds' ? open.seconds : 0 }];
  });
  return [...times].sort((one, other) => one.seconds - other.seconds)[0];
}
