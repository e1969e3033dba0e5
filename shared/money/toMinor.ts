import { CURRENCIES, type CurrencyCode } from '../book/currencies.ts';
import { InputError } from '../errors/InputError.ts';
import { requireNumber } from '../errors/requireNumber.ts';

/** Amounts up to this keep a tenth of the smallest unit within fifteen digits. */
const LARGEST = 1e11;
/** The same in smallest units, of a currency with three digits. */
export const LARGEST_MINOR = 1e14;
/** A double repeats every decimal of so many digits; what lies past them is the noise of sums and products. */
const TRUE_DIGITS = 15;

/**
 * An amount of money as a whole number of the smallest unit paid, half a unit away from zero.
 *
 * Rounds the decimal that a person sees, not the binary number behind it: 1.005 USD is 101, and so is 3 x 0.335.
 * @param amount in the currency, -1e11 to 1e11
 * @throws InputError `price must be a number, got nothing`
 */
export function toMinor(amount: number, currency: CurrencyCode, field = 'amount'): number {
  requireNumber(amount, field, { atLeast: -LARGEST, atMost: LARGEST });
  return wholeMinor(shifted(amount, CURRENCIES[currency].digits));
}

/** A whole number of smallest units as an amount in the currency; the inverse of {@link toMinor}. */
export function fromMinor(minor: number, currency: CurrencyCode): number {
  return minor / 10 ** CURRENCIES[currency].digits;
}

/**
 * A share of an amount, in smallest units, half a unit away from zero.
 * @param share any number: a rate of tax, a discount
 */
export function shareMinor(minor: number, share: number): number {
  return wholeMinor(minor * share);
}

/**
 * A whole amount split by weights into whole amounts that add up to it exactly: the largest remainders get what is left, the
 * first of equals first.
 * @param total smallest units, of either sign
 * @param weights each 0 or more, not all 0 unless the total is
 * @returns one part for each weight; a weight of 0 gets 0
 * @throws InputError `sum of the weights must be greater than 0, got 0`
 */
export function splitMinor(total: number, weights: readonly number[]): readonly number[] {
  requireNumber(total, 'amount to split', {
    atLeast: -LARGEST_MINOR,
    atMost: LARGEST_MINOR,
    whole: true,
  });
  for (const weight of weights) requireNumber(weight, 'weight', { atLeast: 0 });
  if (total === 0) return weights.map(() => 0);
  const largest = Math.max(0, ...weights);
  if (largest === 0)
    throw new InputError({
      field: 'sum of the weights',
      rule: { kind: 'greater than', limit: 0 },
      value: 0,
    });
  const shares = weights.map((weight) => weight / largest);
  const sum = shares.reduce((all, share) => all + share, 0);
  const exact = shares.map((share) => Math.abs(total) * (share / sum));
  const parts = exact.map(Math.floor);
  const order = exact
    .map((part, index) => ({ index, remainder: part - Math.floor(part) }))
    .sort((one, other) => other.remainder - one.remainder || one.index - other.index);
  // What is left is the sum of the remainders, so fewer parts than have one: a weight of 0 is never reached.
  const left = Math.abs(total) - parts.reduce((all, part) => all + part, 0);
  for (const { index } of order.slice(0, left)) parts[index] = (parts[index] ?? 0) + 1;
  return parts.map((part) => (total < 0 ? 0 - part : part));
}

/** Smallest units rounded up to a whole number of steps, forgiving the noise of the computation that led to them. */
export function ceilToStep(minor: number, step: number): number {
  // A millionth of a millionth short of a step is that step.
  return Math.ceil(Number((minor / step).toPrecision(12))) * step;
}

function wholeMinor(minor: number): number {
  const clean = Number(Math.abs(minor).toPrecision(TRUE_DIGITS));
  const whole = Math.round(clean);
  return minor < 0 && whole > 0 ? -whole : whole;
}

/** The decimal point moved in the text: a product with 100 would bring its own rounding. */
function shifted(amount: number, digits: number): number {
  const [figure, power] = String(amount).split('e');
  return Number(`${figure}e${Number(power ?? 0) + digits}`);
}
