import { type OdePoint, stateBetween } from './integrateOde.ts';

/** State at a time within the course. */
export function stateAt(points: readonly OdePoint[], time: number): readonly number[] {
  const low = placeOf(points, time);
  const [before, after] = [points[low], points[low + 1] ?? points[low]];
  return before && after ? stateBetween(before, after, time) : [];
}

/** Index of the last point at or before a time, the last but one at most. */
export function placeOf(points: readonly OdePoint[], time: number): number {
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle]?.time ?? 0) <= time) low = middle;
    else high = middle;
  }
  return low;
}
