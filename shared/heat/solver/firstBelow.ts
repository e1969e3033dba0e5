import type { LayerReading } from './layerReading.ts';

/** Seconds from the first reading to the first fall to a temperature; undefined when there is none. */
export function firstBelow(
  readings: readonly LayerReading[],
  figure: (reading: LayerReading) => number,
  threshold: number,
): number | undefined {
  const start = readings[0]?.time ?? 0;
  const index = readings.findIndex((reading) => figure(reading) <= threshold);
  const after = readings[index];
  if (after === undefined) return undefined;
  const before = readings[index - 1];
  if (before === undefined) return 0;
  const fall = crossing(
    [index - 1, index, index - 2].flatMap((place) => {
      const reading = readings[place];
      return reading === undefined ? [] : [{ time: reading.time, value: figure(reading) }];
    }),
    threshold,
  );
  return fall - start;
}

interface Sample {
  readonly time: number;
  readonly value: number;
}

/** When a curve through two readings passes a value; bent to meet a third one where the three fall steadily. */
function crossing([before, after, earlier]: readonly Sample[], value: number): number {
  if (before === undefined || after === undefined) return Number.NaN;
  const slope = (after.time - before.time) / (after.value - before.value);
  const line = before.time + slope * (value - before.value);
  if (earlier === undefined || earlier.value <= before.value) return line;
  const slopeBefore = (before.time - earlier.time) / (before.value - earlier.value);
  const bend = (slope - slopeBefore) / (after.value - earlier.value);
  const curve = line + bend * (value - before.value) * (value - after.value);
  return Math.min(after.time, Math.max(before.time, curve));
}
