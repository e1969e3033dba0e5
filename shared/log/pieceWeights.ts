import { findUnit } from '../units/findUnit.ts';
import { MEASURES, type UnitSystem } from '../units/measures.ts';
import { toEngine } from '../units/toEngine.ts';
import { UNITS } from '../units/units.ts';

/** Most weights of one round, so that a pasted page is not taken for weights. */
const MOST = 100;

/**
 * Weights typed in one text: `0.31, 0.30 oz`, or without a unit in the shop's. Parts are told apart by commas, semicolons
 * or blanks; a comma between digits of one number is not one.
 * @returns weights [kg] in the order typed; undefined when the text is something else
 */
function parseWeights(text: string, system: UnitSystem): readonly number[] | undefined {
  const [, numbers = '', label = ''] = /^([\d.,;\s]*?)\s*([a-z]*)\.?\s*$/i.exec(text) ?? [];
  const usual = MEASURES.baseMass[system];
  const unit = label === '' ? usual : findUnit(label.toLowerCase(), usual);
  const parts = numbers.split(/[,;\s]+/).filter((part) => part !== '');
  const values = parts.map(Number);
  const isGood = values.every((value) => Number.isFinite(value) && value > 0);
  if (unit === undefined || parts.length === 0 || parts.length > MOST || !isGood) return undefined;
  return values.map((value) => toEngine(value, unit));
}

/** A list of weights as the log keeps it: as typed, with its unit; undefined when it is something else. */
export function typedWeights(text: string, system: UnitSystem): string | undefined {
  if (parseWeights(text, system) === undefined) return undefined;
  const typed = text.trim();
  return /[a-z]/i.test(typed) ? typed : `${typed} ${UNITS[MEASURES.baseMass[system]].label}`;
}

/**
 * Weights of the pieces weighed in one row of the log: the list, else the one weight; none when neither is there.
 * @param record weights as typed, pieceWeight in kg
 * @returns [kg]
 */
export function pieceWeights(
  {
    weights,
    pieceWeight,
  }: { readonly weights?: string | undefined; readonly pieceWeight?: number | undefined },
  system: UnitSystem,
): readonly number[] {
  const list = weights === undefined ? undefined : parseWeights(weights, system);
  return list ?? (pieceWeight === undefined ? [] : [pieceWeight]);
}
