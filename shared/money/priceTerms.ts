import type { Shop } from '../book/settings/settings.ts';
import type { OrderRecord } from '../book/tables.ts';
import { exciseTerms } from './excise/exciseTerms.ts';
import type { PriceTerms } from './price/price.ts';

/**
 * How an order is priced, from the shop's settings and the order's own columns. Sales tax is for retail sales only.
 * @param matching - the color-match charge is for a new pattern
 */
export function priceTerms(
  shop: Shop,
  order: OrderRecord,
  matching: 'new pattern' | 'known pattern',
): PriceTerms {
  return {
    currency: shop.currency,
    aim: { by: 'margin', margin: shop.targetMargin },
    priceStep: shop.priceStep,
    rushShare: order.rush === undefined ? 0 : shop.rushShare,
    colorMatchCharge: matching === 'new pattern' ? shop.colorMatchCharge : 0,
    minimumOrder: shop.minimumOrder,
    discount: order.discount ?? 0,
    shipping: order.shipping ?? 0,
    salesTaxRate: order.saleKind === 'retail' ? shop.salesTaxRate : 0,
    depositShare: shop.depositShare,
    excise: exciseTerms(shop, order),
  };
}
