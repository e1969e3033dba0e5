import type { LayerReading } from './layerReading.ts';

/**
 * A layer's mean and surface at a time, on straight lines between its readings; just after a landing at that moment.
 * @param readings - in order of time, as `solveLayers` gives them
 * @returns undefined before the layer is poured and after its last reading
 */
export function readingAt(
  readings: readonly LayerReading[],
  time: number,
): LayerReading | undefined {
  const next = readings.findIndex((reading) => reading.time > time);
  const after = readings[next];
  const before = readings[next === -1 ? readings.length - 1 : next - 1];
  if (before === undefined) return undefined;
  if (after === undefined) return before.time === time ? before : undefined;
  const share = (time - before.time) / (after.time - before.time);
  const between = (low: number, high: number) => low + share * (high - low);
  return {
    time,
    mean: between(before.mean, after.mean),
    surface: between(before.surface, after.surface),
  };
}
