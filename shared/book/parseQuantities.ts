import { InputError } from '../errors/InputError.ts';

/** Longest list of price breaks; more would not fit a quote. */
const MOST = 8;

/**
 * Whole numbers of pieces written with commas between them, smallest first, each once.
 * @param field - the words the user sees, such as `price breaks at`
 * @throws InputError when something between two commas is not a whole number from 1 to 100,000, or there are too many
 */
export function parseQuantities(text: string, field: string): readonly number[] {
  const parts = text.split(/[,;]/).map((part) => part.trim());
  const quantities = parts.filter((part) => part !== '').map(Number);
  const areFine = quantities.every((one) => Number.isInteger(one) && one >= 1 && one <= 100_000);
  if (!areFine || quantities.length > MOST)
    throw new InputError({
      field,
      rule: { kind: 'form', wanted: `up to ${MOST} whole quantities, such as 25, 50, 100` },
      value: text,
    });
  return [...new Set(quantities)].sort((left, right) => left - right);
}
