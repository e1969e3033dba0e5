import { formatClock } from '../../book/reading/parseClock.ts';
import { GRAY } from '../../elements/shape.ts';
import { durationText, temperatureText } from '../../words/quantityText.ts';
import type { EndLabel } from '../chart/endLabels.ts';
import type { EventLine } from '../chart/eventLines.ts';
import { bandSwatch, type LegendItem } from '../chart/legend.ts';
import type { HeatUp } from './heatUp.ts';
import { hotBar } from './hotBar.ts';

/** Moments from switch-on, with clock times where the run has them; x in s. */
export function heatUpEvents({ target, system }: HeatUp): readonly EventLine[] {
  if (target === undefined) return [];
  const { seconds, firstPour, onAt } = target;
  const clock = (after: number) =>
    onAt === undefined ? '' : `, ${formatClock(onAt + after / 60, system)}`;
  return [
    { x: 0, text: `plate on${clock(0)}` },
    { x: seconds, text: `mold top hot, ${durationText(seconds, 'up')}${clock(seconds)}` },
    { x: firstPour, text: `first pour, ${durationText(firstPour, 'up')}${clock(firstPour)}` },
  ];
}

/** Names at the ends of curves and lines; x in s, y in degC. */
export function heatUpLabels({ course, target, system }: HeatUp): readonly EndLabel[] {
  const last = course[course.length - 1];
  const curves =
    last === undefined
      ? []
      : [
          { x: last.seconds, y: last.plate, text: `plate ${temperatureText(last.plate, system)}` },
          {
            x: last.seconds,
            y: last.top,
            text: `mold top ${temperatureText(last.top, system)}`,
            isBold: true,
          },
        ];
  if (target === undefined) return curves;
  const { top, boilingPoint } = target;
  return [
    ...curves,
    { y: top, text: `must read ${temperatureText(top, system, 'up')}` },
    { y: boilingPoint, text: `water boils ${temperatureText(boilingPoint, system)}` },
  ];
}

/** What band and bar mean. */
export function heatUpLegend({ target }: HeatUp): readonly LegendItem[] {
  const band: LegendItem = {
    draw: bandSwatch({ fill: GRAY.band }),
    text: 'mold top in nine of ten cases',
  };
  if (target?.band === undefined) return [band];
  const hot: LegendItem = {
    draw: (x, y) => [hotBar([x, x + 24], y, false)],
    text: 'hot enough, nine of ten cases',
  };
  return [band, hot];
}
