import type { LayerReading } from './layerReading.ts';

/** Least change of mean or surface worth a reading of its own [K] */
const CHANGE = 1;
/** Longest time without a reading [s] */
const SPACING = 60;

/** The readings that a curve needs: ends, both sides of every landing, each change by a kelvin, each minute. */
export function decimatedReadings(readings: readonly LayerReading[]): readonly LayerReading[] {
  const kept: LayerReading[] = [];
  readings.forEach((reading, index) => {
    const before = kept[kept.length - 1];
    const atLanding =
      readings[index + 1]?.time === reading.time || readings[index - 1]?.time === reading.time;
    const isEnd = before === undefined || index === readings.length - 1;
    if (isEnd || atLanding || isNews(before, reading)) kept.push(reading);
  });
  return kept;
}

function isNews(before: LayerReading, { time, mean, surface }: LayerReading): boolean {
  if (time - before.time >= SPACING) return true;
  return Math.max(Math.abs(mean - before.mean), Math.abs(surface - before.surface)) >= CHANGE;
}
