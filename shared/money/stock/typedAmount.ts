import { parseNumber } from '../../book/reading/parseCell.ts';
import { InputError } from '../../errors/InputError.ts';
import { toEngine } from '../../units/toEngine.ts';
import { type BenchAmount, type PackFacts, packAmount } from '../packAmount.ts';

/** Most of one material that one run can take, in any unit. */
const MOST = 1e6;

/** What a scale, a measuring cup or a dropper at the bench says, by the label a person types behind the number. */
const BENCH_UNITS: Readonly<Record<string, (amount: number) => BenchAmount>> = {
  g: (amount) => ({ kind: 'mass', mass: toEngine(amount, 'g') }),
  kg: (amount) => ({ kind: 'mass', mass: amount }),
  oz: (amount) => ({ kind: 'mass', mass: toEngine(amount, 'oz') }),
  lb: (amount) => ({ kind: 'mass', mass: toEngine(amount, 'lb') }),
  ml: (amount) => ({ kind: 'volume', volume: toEngine(amount, 'mL') }),
  'fl oz': (amount) => ({ kind: 'volume', volume: toEngine(amount, 'floz') }),
  gal: (amount) => ({ kind: 'volume', volume: toEngine(amount, 'gal') }),
  drop: (drops) => ({ kind: 'drops', drops }),
  drops: (drops) => ({ kind: 'drops', drops }),
};

/**
 * An amount as typed, in the material's pack unit: a number alone is in that unit already, `12.5 g` is turned into it.
 * @param field the words the user sees, e.g. `White used`
 * @throws InputError for no number, an amount out of range, or a unit that does not lead to the pack's
 */
export function typedAmount(text: string, field: string, material: PackFacts): number {
  const [, number = text, label = ''] =
    /^\s*([-+\d.eE]+)\s*([A-Za-z][A-Za-z ]*?)\s*$/.exec(text) ?? [];
  const amount = parseNumber(number, field, { atLeast: 0, atMost: MOST }, undefined);
  if (label === '') return amount;
  const bench = unitOf(label)?.(amount);
  if (bench === undefined) throw refused(field, text, UNIT_WORDS);
  if (material.packUnit === 'each') throw refused(field, text, 'a number of pieces');
  const found = packAmount(bench, material);
  if (found.kind === 'amount') return found.amount;
  throw refused(field, text, `in ${material.packUnit}, since the ${found.because}`);
}

const UNIT_WORDS = 'a number, alone or with g, kg, oz, lb, mL, fl oz, gal or drops';

function unitOf(label: string): ((amount: number) => BenchAmount) | undefined {
  const key = label.toLowerCase().replace(/\s+/g, ' ');
  return Object.keys(BENCH_UNITS).includes(key) ? BENCH_UNITS[key] : undefined;
}

function refused(field: string, value: string, wanted: string): InputError {
  return new InputError({ field, rule: { kind: 'form', wanted }, value });
}
