import { type BookIndex, nameKey } from '../../book/bookIndex.ts';
import type { MaterialRecord } from '../../book/tables.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { LayerPlan, OrderPlan } from '../../plan/planTypes.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { packAmount } from '../packAmount.ts';
import type { UnitCosts } from './costIndex.ts';
import type { CostLine } from './costLine.ts';

/** Lines not yet priced to the smallest unit, and what they take for granted. */
export interface DraftLines {
  readonly lines: readonly Omit<CostLine, 'minor'>[];
  readonly assumptions: readonly string[];
}

interface Used {
  readonly key: 'material' | 'colorant';
  readonly material: string;
  readonly layer: string;
  /** Whole run [kg] */
  readonly mass: number;
  /** Taken where Materials has no density of it [kg/m3] */
  readonly usualDensity: number;
}

/**
 * Plastisol and colorants of a run, a line for each layer and material.
 *
 * Plastisol as it is weighed, with overpour, what stays in the cups and the color checks; a colorant as its dose in one cup x cups.
 */
export function materialLines(index: BookIndex, plan: OrderPlan, prices: UnitCosts): DraftLines {
  const used = [...plan.layers.map(baseOf), ...plan.layers.flatMap(dosesOf)];
  const drafts = used.map((one) => lineOf(index, one, prices));
  return {
    lines: drafts.map(({ line }) => line),
    assumptions: [...new Set(drafts.flatMap(({ assumptions }) => assumptions))],
  };
}

function baseOf({ base, layer, totalMass }: LayerPlan): Used {
  const usualDensity = DEFAULTS.density.value;
  return { key: 'material', material: base, layer, mass: totalMass, usualDensity };
}

function dosesOf({ doses, layer, cups }: LayerPlan): readonly Used[] {
  return doses.map(({ material, mass }) => ({
    key: 'colorant',
    material,
    layer,
    mass: mass * cups,
    usualDensity: DEFAULTS.colorantDensity.value,
  }));
}

function lineOf(index: BookIndex, used: Used, prices: UnitCosts) {
  const { key, material, layer, mass, usualDensity } = used;
  const record = { ...index.materials.get(nameKey(material))?.record, material };
  const label = `${material}, ${layer}`;
  const assumptions: string[] = [];
  const found = amountOf(mass, record, usualDensity, assumptions);
  if (found === undefined) return { line: { key, label }, assumptions };
  const price = prices.get(nameKey(material));
  if (price === undefined) {
    assumptions.push(noPrice(material));
    return { line: { key, label, ...found }, assumptions };
  }
  const { perPackUnit: rate, from } = price;
  return { line: { key, label, ...found, rate, from }, assumptions };
}

function amountOf(mass: number, record: MaterialRecord, usual: number, assumptions: string[]) {
  const bench = { kind: 'mass', mass } as const;
  const known = packAmount(bench, record);
  const found = known.kind === 'amount' ? known : packAmount(bench, { ...record, density: usual });
  if (found.kind === 'no answer') {
    assumptions.push(`${found.because}; until then it counts as 0.`);
    return undefined;
  }
  if (known.kind === 'no answer')
    assumptions.push(
      `No density of ${record.material} is in Materials, so ${formatPlain(fromEngine(usual, 'gPerML'))} g/mL is taken.`,
    );
  return { amount: found.amount, unit: found.unit };
}

export function noPrice(material: string): string {
  return `No price of ${material} is in Materials, so it counts as 0.`;
}
