import type { MoneyBook } from '../../book/book.ts';
import { type BookIndex, nameKey } from '../../book/bookIndex.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { LayerPlan } from '../../plan/planTypes.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { type BenchAmount, type PackUnit, packAmount } from '../packAmount.ts';

/** What a pour takes of one material, in its pack unit. */
export interface Use {
  readonly material: string;
  readonly key: string;
  /** In use now, from Materials; "" where none is given. */
  readonly lot: string;
  readonly amount: number;
  readonly unit: PackUnit;
}

export interface Uses {
  readonly uses: readonly Use[];
  /** What was taken because Materials does not say. */
  readonly assumptions: readonly string[];
  /** Materials that are used but cannot be counted, and why. */
  readonly gaps: readonly string[];
}

/** What is poured, and how much of it comes out good; a plan has all of it. */
export interface Poured {
  readonly mold: string;
  readonly layers: readonly Pick<
    LayerPlan,
    'base' | 'cups' | 'cupVolume' | 'totalMass' | 'doses'
  >[];
  /** Good pieces, which the supplies go with. */
  readonly quantity: number;
}

/** Supplies to count: what the shop lists, how many pieces a pack holds, and whether the order's own are still to come. */
export interface SupplyTerms {
  readonly supplies: MoneyBook['supplies'];
  readonly packPieces: number;
  readonly isOrderSupplied: boolean;
}

interface Tally {
  readonly index: BookIndex;
  readonly uses: Map<string, Use>;
  readonly assumptions: Set<string>;
  readonly gaps: Set<string>;
}

/**
 * What a pour takes of every material, in the units it is bought by: the bases of its layers, the doses of all cups, and
 * the supplies that go with the good pieces.
 *
 * base = all cups of its layers; dose = mass in one cup x cups; supplies = amount x pieces, x started packs, or once.
 */
export function usesOf(index: BookIndex, poured: Poured, terms: SupplyTerms): Uses {
  const tally: Tally = { index, uses: new Map(), assumptions: new Set(), gaps: new Set() };
  for (const { base, cups, cupVolume, totalMass, doses } of poured.layers) {
    const volume = cups * cupVolume;
    addUse(tally, base, { mass: totalMass, volume }, DEFAULTS.density.value);
    for (const { material, mass } of doses)
      addUse(tally, material, { mass: mass * cups }, DEFAULTS.colorantDensity.value);
  }
  addSupplies(tally, poured, terms);
  const { uses, assumptions, gaps } = tally;
  return { uses: [...uses.values()], assumptions: [...assumptions], gaps: [...gaps] };
}

/** The plan of a base knows both its mass and its volume; which one counts follows from the pack. */
function addUse(
  tally: Tally,
  name: string,
  { mass, volume }: { readonly mass: number; readonly volume?: number },
  usualDensity: number,
): void {
  const record = tally.index.materials.get(nameKey(name))?.record ?? {};
  const { packUnit, density = usualDensity } = record;
  const isVolume = packUnit === 'gal' || packUnit === 'fl oz' || packUnit === 'mL';
  const bench: BenchAmount =
    isVolume && volume !== undefined ? { kind: 'volume', volume } : { kind: 'mass', mass };
  const isTurned = isVolume ? volume === undefined : volume !== undefined;
  if (record.density === undefined && isTurned && packUnit !== undefined && packUnit !== 'each')
    tally.assumptions.add(
      `density of ${name} is not in Materials: ${formatPlain(fromEngine(density, 'gPerML'))} g/mL is taken`,
    );
  add(tally, name, packAmount(bench, { ...record, material: name, density }));
}

function addSupplies(tally: Tally, { mold, quantity }: Poured, terms: SupplyTerms): void {
  const packs = Math.ceil(quantity / terms.packPieces);
  for (const { record } of terms.supplies) {
    const { material, amount, per } = record;
    if (material === undefined || amount === undefined || per === undefined) continue;
    if (record.mold !== undefined && nameKey(record.mold) !== nameKey(mold)) continue;
    if (per === 'order' && terms.isOrderSupplied) continue;
    const times = per === 'piece' ? quantity : per === 'pack' ? packs : 1;
    const unit = tally.index.materials.get(nameKey(material))?.record.packUnit;
    if (unit === undefined) tally.gaps.add(`pack unit of ${material} must be given in Materials`);
    else add(tally, material, { kind: 'amount', amount: amount * times, unit });
  }
}

function add({ index, uses, gaps }: Tally, name: string, found: ReturnType<typeof packAmount>) {
  if (found.kind === 'no answer') {
    gaps.add(found.because);
    return;
  }
  const key = nameKey(name);
  const { material = name, lot = '' } = index.materials.get(key)?.record ?? {};
  const amount = found.amount + (uses.get(key)?.amount ?? 0);
  if (amount > 0) uses.set(key, { material, key, lot, amount, unit: found.unit });
}
