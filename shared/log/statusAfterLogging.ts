import type { ORDER_STATUSES } from '../book/tables/orders.ts';

type Status = (typeof ORDER_STATUSES)[number] | undefined;

/** An order's status once its run sheet is made; one that is further on, or canceled, stays. */
export function statusAfterPlanning(status: Status): Status {
  return status === undefined || status === 'asked' || status === 'accepted' ? 'planned' : status;
}

/**
 * An order's status after an entry of the log: poured once the good pieces reach the quantity.
 * @param good - good pieces logged for the order, the entry included
 */
export function statusAfterLogging(status: Status, good: number, quantity: number): Status {
  const isBefore = statusAfterPlanning(status) === 'planned';
  return isBefore && good >= quantity ? 'poured' : status;
}
