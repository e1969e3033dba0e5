import type { MaterialRow } from '../../book/bookIndex.ts';
import type { Shop } from '../../book/settings/settings.ts';
import type { OrderFacts } from './findOrder.ts';

/**
 * The temperature no cup of an order may pass [degC]: the lowest of the shop's stop, the bases' maxima, and the maxima of the
 * additives that go through the cook. An additive that bears less than the cook is stirred in afterward and named in a warning.
 */
export function hardStop(facts: OrderFacts, shop: Shop): number {
  const bases = facts.pattern.layers.map((layer) => layer.base);
  const limit = Math.min(shop.hardStop, ...maxima(bases));
  const cook = Math.min(shop.cookTemperature, limit);
  const additives = facts.doses.flat().map((dose) => dose.material);
  return Math.min(limit, ...maxima(additives).filter((maximum) => maximum >= cook));
}

/** What a cup is cooked to [degC]: the shop's setting, or less where the stop is lower. */
export function cookLimit(facts: OrderFacts, shop: Shop): number {
  return Math.min(shop.cookTemperature, hardStop(facts, shop));
}

function maxima(materials: readonly MaterialRow[]): readonly number[] {
  return materials
    .map(({ record }) => record.maximumTemperature)
    .filter((maximum) => maximum !== undefined);
}
