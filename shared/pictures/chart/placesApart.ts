/**
 * Places as near as can be to the wanted ones and at least `gap` apart, in the order of the wanted ones, kept between two ends.
 * Where there is no room for all at that gap, they stand evenly over what there is.
 * @param wanted - in any order
 */
export function placesApart(
  wanted: readonly number[],
  gap: number,
  [low, high]: readonly [low: number, high: number],
): readonly number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const most = wanted.length < 2 ? gap : (high - low) / (wanted.length - 1);
  const step = Math.min(gap, most);
  const placed: number[] = [];
  order.forEach((index, rank) => {
    const least = rank === 0 ? low : (placed[rank - 1] ?? low) + step;
    placed.push(Math.max(wanted[index] ?? low, least));
  });
  for (let rank = placed.length - 1; rank >= 0; rank--) {
    const top = rank === placed.length - 1 ? high : (placed[rank + 1] ?? high) - step;
    placed[rank] = Math.min(placed[rank] ?? top, top);
  }
  const result: number[] = [];
  order.forEach((index, rank) => {
    result[index] = placed[rank] ?? low;
  });
  return result;
}
