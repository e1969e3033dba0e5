import type { MaterialRecord } from '../book/tables.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { fromEngine, toEngine } from '../units/toEngine.ts';
import { UNITS, type UnitName } from '../units/units.ts';

export type PackUnit = NonNullable<MaterialRecord['packUnit']>;

/** What is known of a material that is bought in packs. */
export type PackFacts = Pick<MaterialRecord, 'material' | 'packUnit' | 'density' | 'dropVolume'>;

/** An amount as the bench knows it: [kg], [m3], drops, or pieces. */
export type BenchAmount =
  | { readonly kind: 'mass'; readonly mass: number }
  | { readonly kind: 'volume'; readonly volume: number }
  | { readonly kind: 'drops'; readonly drops: number }
  | { readonly kind: 'pieces'; readonly pieces: number };

type NoAmount = { readonly kind: 'no answer'; readonly because: string };

export type PackAmount =
  | { readonly kind: 'amount'; readonly amount: number; readonly unit: PackUnit }
  | NoAmount;

/** The unit that a pack unit stands for; pieces have none. */
const PACK_UNITS = {
  gal: 'gal',
  'fl oz': 'floz',
  mL: 'mL',
  lb: 'lb',
  oz: 'oz',
  g: 'g',
  each: undefined,
} as const satisfies Readonly<Record<PackUnit, UnitName | undefined>>;

/**
 * A bench amount in the unit that its material is bought by.
 *
 * mass = volume x density; a volume of drops = drops x drop volume, the usual drop where the material has none of its own.
 * @returns no answer with its reason where the pack unit or a density is missing, or pieces stand against a weight
 */
export function packAmount(bench: BenchAmount, material: PackFacts): PackAmount {
  const { packUnit, material: name = '' } = material;
  if (packUnit === undefined) return noAnswer(`pack unit of ${name} must be given in Materials`);
  const unit = PACK_UNITS[packUnit];
  if (bench.kind === 'pieces' || unit === undefined) {
    if (bench.kind === 'pieces' && unit === undefined)
      return { kind: 'amount', amount: bench.pieces, unit: packUnit };
    return noAnswer(
      bench.kind === 'pieces'
        ? `${name} is bought by the ${packUnit}: a number of pieces does not say how much it is`
        : `${name} is bought by the piece: a weight or volume does not say how many it is`,
    );
  }
  const { quantity } = UNITS[unit];
  const value = engineValue(bench, quantity, material);
  if (value === undefined) return noAnswer(noDensity(name));
  return { kind: 'amount', amount: fromEngine(value, unit), unit: packUnit };
}

/**
 * An amount in the pack unit as mass, volume or pieces: the inverse of {@link packAmount}.
 * @param amount in the material's pack unit
 * @param kind what is wanted
 */
export function benchAmount(
  amount: number,
  kind: 'mass' | 'volume' | 'pieces',
  material: PackFacts,
): BenchAmount | NoAmount {
  const { packUnit, material: name = '' } = material;
  if (packUnit === undefined) return noAnswer(`pack unit of ${name} must be given in Materials`);
  const unit = PACK_UNITS[packUnit];
  if (unit === undefined)
    return kind === 'pieces'
      ? { kind, pieces: amount }
      : noAnswer(`${name} is bought by the piece: its number does not say its ${kind}`);
  if (kind === 'pieces')
    return noAnswer(`${name} is bought by the ${packUnit}: its amount is no number of pieces`);
  const { quantity } = UNITS[unit];
  const value = toEngine(amount, unit);
  const own: BenchAmount =
    quantity === 'mass' ? { kind: 'mass', mass: value } : { kind: 'volume', volume: value };
  const turned = engineValue(own, kind, material);
  if (turned === undefined) return noAnswer(noDensity(name));
  return kind === 'mass' ? { kind, mass: turned } : { kind, volume: turned };
}

/** In [kg] or [m3]; undefined where only a density leads from one to the other. */
function engineValue(
  bench: Exclude<BenchAmount, { readonly kind: 'pieces' }>,
  quantity: string,
  { density, dropVolume = DEFAULTS.dropVolume.value }: PackFacts,
): number | undefined {
  if (bench.kind === 'mass') {
    if (quantity === 'mass') return bench.mass;
    return density === undefined ? undefined : bench.mass / density;
  }
  const volume = bench.kind === 'volume' ? bench.volume : bench.drops * dropVolume;
  if (quantity === 'volume') return volume;
  return density === undefined ? undefined : volume * density;
}

function noDensity(name: string): string {
  return `density of ${name} must be given in Materials to turn its weight into a volume and back`;
}

function noAnswer(because: string): NoAmount {
  return { kind: 'no answer', because };
}
