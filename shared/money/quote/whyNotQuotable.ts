import type { OrderRecord } from '../../book/tables.ts';

/** Why an order cannot be quoted, in a sentence; undefined where it can. */
export function whyNotQuotable({
  order = '',
  acceptedOn,
  status,
}: OrderRecord): string | undefined {
  if (acceptedOn !== undefined)
    return `Order ${order} was accepted on ${acceptedOn} at its price agreed: clear Accepted on and Price agreed in Orders to quote it anew.`;
  if (status === 'canceled')
    return `Order ${order} is canceled: set its status to asked to quote it.`;
  if (status === undefined || status === 'asked' || status === 'accepted' || status === 'planned')
    return undefined;
  return `Order ${order} is ${status} already, so it is not quoted any more.`;
}
