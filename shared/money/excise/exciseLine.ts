import type { ExciseIn, ExciseStatus } from '../../book/settings/exciseChoices.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { shareMinor } from '../toMinor.ts';

/** How one sale is taxed; made by `exciseTerms` from the shop's settings and the order. */
export interface ExciseTerms {
  /** Whether the shop keeps books of the tax at all. */
  readonly isOn: boolean;
  /** Share of the base, 0 to 1. */
  readonly rate: number;
  /** Base as a share of the price without the tax: 1 for the sale price, less for a constructive price. */
  readonly baseShare: number;
  readonly taxIn: ExciseIn;
  readonly status: ExciseStatus;
}

/** The tax on one sale, in smallest units; `base` and `tax` are 0 where none is due, with the reason. */
export interface ExciseLine {
  readonly base: number;
  readonly tax: number;
  /** What the customer pays on top of the price. */
  readonly added: number;
  /** What of the price is passed on as tax. */
  readonly inside: number;
  readonly rate: number;
  readonly reason: ExciseStatus | 'off';
}

/**
 * Excise of one sale.
 *
 * e = rate x base share; inside the price: tax = price x e / (1 + e), base = base share x (price - tax);
 * added to it: tax = price x e, base = base share x price. Each is rounded to the smallest unit once.
 * @param price of the goods with packing and all charges for making them, less discount; without transport and sales tax
 *   [smallest units], >= 0
 * @throws InputError on a figure out of range
 * @source IRC4161, IRC4216, REVRUL65-41
 */
export function exciseLine(price: number, terms: ExciseTerms): ExciseLine {
  requireNumber(price, 'price', { atLeast: 0, whole: true });
  const effective = effectiveRate(terms);
  const { rate, baseShare, status } = terms;
  if (!terms.isOn || status !== 'taxable')
    return { base: 0, tax: 0, added: 0, inside: 0, rate, reason: terms.isOn ? status : 'off' };
  if (terms.taxIn === 'added to the price') {
    const tax = shareMinor(price, effective);
    return { base: shareMinor(price, baseShare), tax, added: tax, inside: 0, rate, reason: status };
  }
  const tax = shareMinor(price, effective / (1 + effective));
  const base = shareMinor(price - tax, baseShare);
  return { base, tax, added: 0, inside: tax, rate, reason: status };
}

/**
 * Tax as a share of the price without it: rate x base share, or 0 where none is due.
 * @throws InputError `excise rate must be at most 1, got 10`
 */
export function effectiveRate({ isOn, status, rate, baseShare }: ExciseTerms): number {
  requireNumber(rate, 'excise rate', { atLeast: 0, atMost: 1 });
  requireNumber(baseShare, 'share of the price that is taxed', { greaterThan: 0, atMost: 1 });
  return isOn && status === 'taxable' ? rate * baseShare : 0;
}
