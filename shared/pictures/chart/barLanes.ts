interface Placed<Item> {
  readonly item: Item;
  readonly lane: number;
}

/**
 * Puts spans that overlap below each other: one after the other, each into the first lane that is free.
 * @param span - where an item begins and ends
 */
export function barLanes<Item>(
  items: readonly Item[],
  span: (item: Item) => readonly [from: number, to: number],
): { readonly placed: readonly Placed<Item>[]; readonly lanes: number } {
  const ends: number[] = [];
  const placed = items.map((item) => {
    const [from, to] = span(item);
    const free = ends.findIndex((end) => end <= from);
    const lane = free < 0 ? ends.length : free;
    ends[lane] = to;
    return { item, lane };
  });
  return { placed, lanes: ends.length };
}
