import {
  type Account,
  type Change,
  draw,
  type MovePlace,
  post,
  putBack,
  receive,
} from './account.ts';
import type { MoveReason } from './ledgerTypes.ts';
import { leftOf } from './lotQueue.ts';

/** A move that can be posted: its amount is a number, its reason is known. */
export interface Move extends MovePlace {
  readonly reason: MoveReason;
  readonly amount: number;
  /** Of a purchase; undefined where it is not given or not usable. */
  readonly money: number | undefined;
}

export interface Posting extends Change {
  readonly change: number;
  readonly paid: number;
  /** Of a count: what was expected, and the value found or lost. */
  readonly count?: { readonly expected: number; readonly value: number };
}

/** Posts one move to its material's account. */
export function postMove(account: Account, move: Move): Posting {
  switch (move.reason) {
    case 'purchase':
      return move.amount >= 0 ? buy(account, move) : giveBack(account, move);
    case 'counted':
      return count(account, move);
    default:
      return move.amount > 0
        ? { ...putBack(account, move.amount, move), change: move.amount, paid: 0 }
        : { ...draw(account, -move.amount, move.lot), change: move.amount, paid: 0 };
  }
}

/** A purchase without a price is taken at the one reckoned with so far. */
function buy(account: Account, move: Move): Posting {
  const { amount } = move;
  const paid = move.money ?? amount * (account.rate ?? 0);
  account.boughtAmount += amount;
  account.boughtMoney += paid;
  if (amount === 0) {
    // Freight and the like: a cost without a material.
    const change = { cost: paid, fifoCost: paid };
    post(account, change);
    return { ...change, lots: [], change: 0, paid };
  }
  account.isBought ||= move.money !== undefined;
  return { ...receive(account, amount, paid / amount, move), change: amount, paid };
}

/** Back to the supplier: what was worth more or less than the money that came back is a cost. */
function giveBack(account: Account, { amount, money, lot }: Move): Posting {
  const out = draw(account, -amount, lot);
  const refund = money === undefined ? out.cost : Math.abs(money);
  account.boughtAmount += amount;
  account.boughtMoney -= refund;
  post(account, { cost: -refund, fifoCost: -refund });
  const { lots } = out;
  const cost = out.cost - refund;
  return { cost, fifoCost: out.fifoCost - refund, lots, change: amount, paid: -refund };
}

/** Sets what is there; of a lot that is named only that lot. The difference is posted at the price reckoned with. */
function count(account: Account, move: Move): Posting {
  const { onHand, queue } = account;
  const expected = move.lot === '' || onHand < 0 ? onHand : leftOf(queue, move.lot);
  const change = move.amount - expected;
  if (change < 0) {
    const out = draw(account, -change, move.lot);
    return { ...out, change, paid: 0, count: { expected, value: -out.cost } };
  }
  if (change === 0)
    return { cost: 0, fifoCost: 0, lots: [], change, paid: 0, count: { expected, value: 0 } };
  const price = account.rate ?? 0;
  const value = change * price;
  const found = receive(account, change, price, move);
  post(account, { cost: -value, fifoCost: -value });
  return {
    cost: found.cost - value,
    fifoCost: found.fifoCost - value,
    lots: found.lots,
    change,
    paid: 0,
    count: { expected, value },
  };
}
