import { scaledDose } from '../../batch/scaledDose.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { DoseFacts } from '../facts/findDoses.ts';

/** Liquids given in mL are counted as drops up to this many; above, a scale is quicker and surer. */
const MOST_DROPS = 60;

const SPOONED: readonly string[] = ['powder', 'glitter', 'salt'];

/** A dose of the recipe in a cup of some size, and what the bench measures it by. */
export interface SizedDose {
  readonly material: string;
  readonly lot: string;
  /** In the cup [kg] */
  readonly mass: number;
  /** In the cup, seldom whole */
  readonly drops: number;
  /** Of a level spoonful [kg/m3] */
  readonly spoonDensity: number;
  readonly by: 'drops' | 'spoon' | 'scale';
}

/**
 * A dose for one cup, by the material's own figures or else the defaults.
 * @param cupVolume - base in the cup, cold [m3]
 */
export function sizedDose({ material, ...dose }: DoseFacts, cupVolume: number): SizedDose {
  const { record } = material;
  const spoonDensity = record.spoonDensity ?? DEFAULTS.spoonDensity.value;
  const { mass, drops } = scaledDose(
    {
      amount: dose.amount,
      unit: dose.unit,
      per: dose.per,
      dropVolume: record.dropVolume ?? DEFAULTS.dropVolume.value,
      density: record.density ?? DEFAULTS.colorantDensity.value,
      spoonDensity,
    },
    cupVolume,
  );
  const named = { material: record.material ?? '', lot: record.lot ?? '' };
  const isSpooned = dose.unit === 'tsp' || SPOONED.includes(record.kind ?? '');
  const isCounted =
    dose.unit === 'drop' || (dose.unit === 'mL' && !isSpooned && drops <= MOST_DROPS);
  const by = isCounted ? 'drops' : isSpooned ? 'spoon' : 'scale';
  return { ...named, mass, drops, spoonDensity, by };
}
