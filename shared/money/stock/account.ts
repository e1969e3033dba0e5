import type { LotPart } from './ledgerTypes.ts';
import {
  addLayer,
  emptyQueue,
  type LotQueue,
  layerToRefill,
  refill,
  takeFrom,
} from './lotQueue.ts';

/** Rests smaller than this share of all that came in are binary dust. */
const DUST = 1e-9;

/** The running state of one material; money unrounded. */
export interface Account {
  onHand: number;
  /** At the weighted average; below 0 by what was used before it was bought. */
  value: number;
  /** Price of one pack unit reckoned with now; undefined while none is known. */
  rate: number | undefined;
  /** What stock used before it was bought was reckoned at. */
  owed: number;
  /** All that came in, the scale of {@link DUST}. */
  received: number;
  isBought: boolean;
  boughtAmount: number;
  boughtMoney: number;
  cost: number;
  fifoCost: number;
  readonly queue: LotQueue;
}

/** What a change cost, by both rules, and the lots it touched. */
export interface Change {
  readonly cost: number;
  readonly fifoCost: number;
  readonly lots: readonly LotPart[];
}

export interface MovePlace {
  readonly lot: string;
  readonly date: string;
  readonly row: number;
}

/** @param listPrice of one pack unit, for what is used before anything was bought */
export function openAccount(listPrice: number | undefined): Account {
  return {
    onHand: 0,
    value: 0,
    rate: listPrice,
    owed: 0,
    received: 0,
    isBought: false,
    boughtAmount: 0,
    boughtMoney: 0,
    cost: 0,
    fifoCost: 0,
    queue: emptyQueue(),
  };
}

/**
 * Takes something in at a price. What was used before it was bought is settled first: the difference to what that was
 * reckoned at is a cost now, so that the average is that of what is there.
 * @param amount > 0
 */
export function receive(account: Account, amount: number, price: number, place: MovePlace): Change {
  const deficit = Math.max(0, -account.onHand);
  const covered = Math.min(deficit, amount);
  const settled = deficit > 0 ? (account.owed * covered) / deficit : 0;
  const correction = covered * price - settled;
  account.owed -= settled;
  account.received += amount;
  account.onHand += amount;
  account.value += amount * price - correction;
  if (amount - covered > dustOf(account))
    addLayer(account.queue, { ...place, price, left: amount - covered });
  settle(account);
  account.rate = account.onHand > 0 ? account.value / account.onHand : price;
  const change = { cost: correction, fifoCost: correction };
  post(account, change);
  return { ...change, lots: [{ lot: place.lot, amount }] };
}

/** Takes something out; what is not there is reckoned at the last price and owed. @param amount > 0 */
export function draw(account: Account, amount: number, lot: string): Change {
  const dust = dustOf(account);
  const there = Math.max(0, account.onHand);
  const { lots, cost: fifo, missing } = takeFrom(account.queue, amount, lot, dust);
  const isAll = there - amount <= dust;
  const rate = account.rate ?? 0;
  const owed = missing * rate;
  const cost = (isAll ? Math.max(0, account.value) : amount * rate) + owed;
  account.onHand -= amount;
  account.value -= cost;
  account.owed += owed;
  settle(account);
  const change = { cost, fifoCost: fifo + owed };
  post(account, change);
  return { ...change, lots };
}

/** Takes something back that had gone out, at what the stock is reckoned at. @param amount > 0 */
export function putBack(account: Account, amount: number, place: MovePlace): Change {
  const deficit = Math.max(0, -account.onHand);
  const covered = Math.min(deficit, amount);
  const settled = deficit > 0 ? (account.owed * covered) / deficit : 0;
  const rest = amount - covered;
  const rate = account.rate ?? 0;
  const layer = layerToRefill(account.queue, place.lot);
  if (rest > 0 && layer) refill(account.queue, layer, rest);
  else if (rest > 0) addLayer(account.queue, { ...place, price: rate, left: rest });
  const worth = settled + rest * rate;
  account.owed -= settled;
  account.received += amount;
  account.onHand += amount;
  account.value += worth;
  settle(account);
  const change = { cost: -worth, fifoCost: -(settled + rest * (layer?.price ?? rate)) };
  post(account, change);
  return { ...change, lots: [{ lot: layer?.lot ?? place.lot, amount }] };
}

/** Books a cost, as a change says it. */
export function post(
  account: Account,
  { cost, fifoCost }: Pick<Change, 'cost' | 'fifoCost'>,
): void {
  account.cost += cost;
  account.fifoCost += fifoCost;
}

/** A rest that is only binary dust is nothing, and worth nothing. */
function settle(account: Account): void {
  if (Math.abs(account.onHand) > dustOf(account)) return;
  account.onHand = 0;
  account.owed = 0;
  account.cost += account.value;
  account.value = 0;
}

function dustOf({ received }: Account): number {
  return DUST * received;
}
