/** Time in which arriving items are handed over together [ms]; short for an eye, long for a grid that draws after each. */
const TOGETHER = 150;

/**
 * Hands items over in their order, those of a burst together, so that the grid draws once for all of them.
 *
 * The first after a quiet time goes at once. An item that fails does not hold up those behind it.
 *
 * @param failed - told what an item threw
 */
export function inBursts<Item>(
  take: (item: Item) => void,
  failed: (error: unknown) => void,
): (item: Item) => void {
  const waiting: Item[] = [];
  let last = Number.NEGATIVE_INFINITY;

  function handOver() {
    for (const item of waiting.splice(0)) {
      try {
        take(item);
      } catch (error) {
        failed(error);
      }
    }
    last = performance.now();
  }

  return (item) => {
    waiting.push(item);
    if (waiting.length > 1) return;
    setTimeout(handOver, Math.max(0, last + TOGETHER - performance.now()));
  };
}
