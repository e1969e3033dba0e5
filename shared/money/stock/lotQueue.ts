import type { LotPart } from './ledgerTypes.ts';

/** One purchase and what is left of it. */
export interface Layer {
  readonly lot: string;
  readonly date: string;
  readonly row: number;
  /** Money for one pack unit. */
  readonly price: number;
  left: number;
}

/** Purchases from the oldest on; everything before `head` is used up. */
interface Line {
  readonly layers: Layer[];
  head: number;
}

/** A lot's purchases, and what is left of all of them. */
interface LotLine extends Line {
  left: number;
}

export interface LotQueue {
  readonly all: Line;
  readonly byLot: Map<string, LotLine>;
}

export function emptyQueue(): LotQueue {
  return { all: { layers: [], head: 0 }, byLot: new Map() };
}

function lotKey(lot: string): string {
  return lot.trim().toLowerCase();
}

export function addLayer(queue: LotQueue, layer: Layer): void {
  queue.all.layers.push(layer);
  noteOfLot(queue, layer);
}

function noteOfLot({ byLot }: LotQueue, layer: Layer): void {
  const key = lotKey(layer.lot);
  const line = byLot.get(key) ?? { layers: [], head: 0, left: 0 };
  byLot.set(key, line);
  line.layers.push(layer);
  line.left += layer.left;
}

/** What is left of one lot, all its purchases together. */
export function leftOf(queue: LotQueue, lot: string): number {
  return queue.byLot.get(lotKey(lot))?.left ?? 0;
}

export interface Taken {
  readonly lots: readonly LotPart[];
  readonly cost: number;
  /** What was asked for and is not there. */
  readonly missing: number;
}

/**
 * Takes an amount from the lot that is named, and what that does not hold from the oldest on. Each purchase is used up once,
 * so that many moves take a time in proportion to their number.
 * @param dust amounts below it are rests of binary arithmetic
 */
export function takeFrom(queue: LotQueue, amount: number, lot: string, dust: number): Taken {
  const lots: { lot: string; amount: number }[] = [];
  const named = lot === '' ? undefined : queue.byLot.get(lotKey(lot));
  const first = named ? takeAlong(named, amount, dust, lots) : { cost: 0, missing: amount };
  const rest = takeAlong(queue.all, first.missing, dust, lots);
  skipUsedUp(queue.all);
  for (const part of lots) {
    const line = queue.byLot.get(lotKey(part.lot));
    if (line) line.left -= part.amount;
  }
  return { lots, cost: first.cost + rest.cost, missing: rest.missing };
}

function takeAlong(
  line: Line,
  amount: number,
  dust: number,
  lots: { lot: string; amount: number }[],
): { readonly cost: number; readonly missing: number } {
  let missing = amount;
  let cost = 0;
  while (missing > dust) {
    const layer = line.layers[line.head];
    if (layer === undefined) break;
    if (layer.left > 0) {
      const isAll = layer.left - missing <= dust;
      const part = isAll ? layer.left : missing;
      cost += part * layer.price;
      layer.left = isAll ? 0 : layer.left - part;
      missing -= part;
      const last = lots[lots.length - 1];
      if (last && last.lot === layer.lot) last.amount += part;
      else lots.push({ lot: layer.lot, amount: part });
    }
    if (layer.left === 0) line.head += 1;
  }
  return { cost, missing: missing > dust ? missing : 0 };
}

function skipUsedUp(line: Line): void {
  while (line.layers[line.head]?.left === 0) line.head += 1;
}

/**
 * The purchase that something goes back to: an open one of its lot, else the last of its lot, else the oldest open one.
 * Undefined where nothing was ever bought.
 */
export function layerToRefill(queue: LotQueue, lot: string): Layer | undefined {
  const line = lot === '' ? undefined : queue.byLot.get(lotKey(lot));
  return (line && openOrLast(line)) ?? openOrLast(queue.all);
}

function openOrLast({ layers, head }: Line): Layer | undefined {
  return layers[head] ?? layers[layers.length - 1];
}

/** Puts an amount back to its purchase; one that is used up comes back as the next to be taken. */
export function refill(queue: LotQueue, layer: Layer, amount: number): void {
  const line = queue.byLot.get(lotKey(layer.lot));
  if (layer.left > 0) {
    layer.left += amount;
    if (line) line.left += amount;
    return;
  }
  const again = { ...layer, left: amount };
  const { all } = queue;
  if (all.head > 0) {
    all.head -= 1;
    all.layers[all.head] = again;
  } else all.layers.push(again);
  noteOfLot(queue, again);
}
