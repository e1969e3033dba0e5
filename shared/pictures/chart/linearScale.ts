/** From a value to its place on paper. */
export type Scale = (value: number) => number;

/** A straight scale; a domain of one value stands in the middle of its range. */
export function linearScale(
  [low, high]: readonly [low: number, high: number],
  [start, end]: readonly [start: number, end: number],
): Scale {
  if (low === high) return () => (start + end) / 2;
  return (value) => start + ((value - low) / (high - low)) * (end - start);
}
