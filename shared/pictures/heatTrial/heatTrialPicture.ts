import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, segment, shape } from '../../elements/shape.ts';
import type { HeatTrialPictured } from '../../trials/trialPictureTypes.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { temperatureText } from '../../words/quantityText.ts';
import { type EndLabel, endLabels } from '../chart/endLabels.ts';
import { linePath } from '../chart/linePath.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Axis, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { readingLegend, readingMarks } from '../chart/readingMarks.ts';
import { residualStrip } from './residualStrip.ts';

/** Height of the strip of residuals, its axis with it, and of the room between it and the plot [px]. */
const STRIP = 120;
const BETWEEN = 14;

/** Readings with the curve fitted to them, and below what the curve leaves over. */
export function heatTrialPicture(trial: HeatTrialPictured, size: PictureSize): PlainElement {
  const { curve, readings, system, target } = trial;
  const labels = labelsOf(trial);
  const plot = { width: size.width, height: size.height - STRIP + 40 - BETWEEN };
  const { edges, key } = plotLayout({ legend: readingLegend(readings), labels, events: [] }, plot);
  const { left, right, top, bottom } = edges;
  const unit = MEASURES.temperature[system];
  const shown = [
    ...[...curve, ...readings].map((one) => one.top),
    ...(target === undefined ? [] : [target]),
  ].map((one) => fromEngine(one, unit));
  const across = minutesAxis(trial, right - left);
  const up = {
    title: UNITS[unit].label,
    room: bottom - top,
    along: 'down',
    narrowest: 10,
  } as const;
  // The ticks of time are named once, below the strip.
  const frame = plotFrame(edges, { ...across, title: '', tickText: () => '' }, niceAxis(shown, up));
  const x = (seconds: number) => frame.x(fromEngine(seconds, 'min'));
  const y = (temperature: number) => frame.y(fromEngine(temperature, unit));
  const d = linePath(curve.map(({ seconds, top }) => [x(seconds), y(top)]));
  return pictureRoot(trial, size, [
    ...key,
    ...frame.drawn,
    ...(target === undefined
      ? []
      : [
          segment([left, y(target)], [right, y(target)], {
            stroke: GRAY.text,
            'stroke-width': 1.4,
          }),
        ]),
    ...(d === undefined
      ? []
      : [shape('path', { d, fill: 'none', stroke: GRAY.text, 'stroke-width': 2.4 })]),
    ...readingMarks(readings, (reading) => [x(reading.seconds), y(reading.top)]),
    ...endLabels(
      labels.map((label) => ({ ...label, y: y(label.y) })),
      edges,
      size.width,
    ),
    ...residualStrip(trial, across, {
      left,
      right,
      top: size.height - STRIP + 18,
      bottom: size.height - 40,
    }),
  ]);
}

function minutesAxis({ curve, readings }: HeatTrialPictured, room: number): Axis {
  const minutes = [...curve, ...readings].map(({ seconds }) => fromEngine(seconds, 'min'));
  return niceAxis([0, ...minutes], {
    title: 'minutes from switch-on',
    room,
    along: 'across',
    narrowest: 1,
  });
}

function labelsOf({ curve, target, system }: HeatTrialPictured): readonly EndLabel[] {
  const last = curve[curve.length - 1];
  return [
    ...(last === undefined
      ? []
      : [{ y: last.top, text: `fitted ${temperatureText(last.top, system)}`, isBold: true }]),
    ...(target === undefined
      ? []
      : [{ y: target, text: `must read ${temperatureText(target, system, 'up')}` }]),
  ];
}
