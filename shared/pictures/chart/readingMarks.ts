import type { PlainElement } from '../../elements/plainElement.ts';
import type { Point } from '../../elements/shape.ts';
import type { HeatDetail } from '../../plan/uncertainty/heatDetail.ts';
import { type LegendItem, markSwatch } from './legend.ts';
import { pointMark } from './pointMark.ts';

type Readings = HeatDetail['readings'];

/** Trials named in the legend; the marks of further ones are drawn all the same. */
const MOST_NAMED = 4;

/** A mark for every reading, its form by trial. */
export function readingMarks(
  readings: Readings,
  at: (reading: Readings[number]) => Point,
): readonly PlainElement[] {
  const trials = trialsOf(readings);
  return readings.map((reading) => pointMark(at(reading), trials.indexOf(reading.trial)));
}

/** What the marks mean. */
export function readingLegend(readings: Readings): readonly LegendItem[] {
  const trials = trialsOf(readings);
  const named = trials.slice(0, MOST_NAMED).map(
    (trial, index): LegendItem => ({
      draw: markSwatch(index),
      text: `readings of ${trial}`,
    }),
  );
  const more = trials.length - named.length;
  if (more === 0) return named;
  return [...named, { draw: markSwatch(MOST_NAMED), text: `and ${more} more` }];
}

function trialsOf(readings: Readings): readonly string[] {
  return [...new Set(readings.map(({ trial }) => trial))];
}
