import type { CurrencyCode } from '../book/currencies.ts';
import { formatPlain } from '../units/formatPlain.ts';
import type { PackUnit } from './packAmount.ts';

/** An amount of a material for the eye, to four digits: `3.25 gal`, `468 pieces`. */
export function packAmountText(amount: number, unit: PackUnit | undefined): string {
  const number = formatPlain(Number(amount.toPrecision(4)));
  if (unit === undefined) return number;
  if (unit === 'each') return amount === 1 ? '1 piece' : `${number} pieces`;
  return `${number} ${unit}`;
}

/** What one pack unit costs; a rate is not rounded to coins: `62 USD per gal`, `0.062 USD per piece`. */
export function packRateText(
  rate: number,
  unit: PackUnit | undefined,
  currency: CurrencyCode,
): string {
  const per = unit === undefined ? 'unit' : unit === 'each' ? 'piece' : unit;
  return `${formatPlain(Number(rate.toPrecision(4)))} ${currency} per ${per}`;
}

/** A lot by its name, or that it has none. */
export function lotText(lot: string): string {
  return lot === '' ? 'no lot' : `lot ${lot}`;
}
