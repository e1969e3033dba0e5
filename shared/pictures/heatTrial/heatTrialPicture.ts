import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, segment } from '../../elements/shape.ts';
import type { HeatTrialPictured } from '../../trials/trialPictureTypes.ts';
import { MEASURES } from '../../units/measures.ts';
import { UNITS } from '../../units/units.ts';
import { temperatureText } from '../../words/quantityText.ts';
import { type EndLabel, endLabels } from '../chart/endLabels.ts';
import { lineShape } from '../chart/lineShape.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Axis, type Edges, inUnit, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { readingLegend, readingMarks } from '../chart/readingMarks.ts';
import { heatTrialText } from './heatTrialText.ts';
import { residualStrip } from './residualStrip.ts';

/** Height of the strip of residuals, its axis with it, and of the room between it and the plot [px]. */
const STRIP = 120;
const BETWEEN = 14;

/** Readings with the curve fitted to them, and below what the curve leaves over. */
export function heatTrialPicture(trial: HeatTrialPictured, size: PictureSize): PlainElement {
  const { curve, readings, target } = trial;
  const labels = labelsOf(trial);
  const plot = { width: size.width, height: size.height - STRIP + 40 - BETWEEN };
  const { edges, key } = plotLayout({ legend: readingLegend(readings), labels, events: [] }, plot);
  const { left, right } = edges;
  const across = minutesAxis(trial, edges);
  // The ticks of time are named once, below the strip.
  const unnamed = { ...across, title: '', tickText: () => '' };
  const frame = plotFrame(edges, unnamed, temperatureAxis(trial, edges));
  const { x, y } = frame;
  const strip = { left, right, top: size.height - STRIP + 18, bottom: size.height - 40 };
  const texts = { ...trial, text: heatTrialText(trial) };
  return pictureRoot(texts, size, [
    ...key,
    ...frame.drawn,
    ...(target === undefined ? [] : [segment([left, y(target)], [right, y(target)], TARGET)]),
    ...lineShape(
      curve.map(({ seconds, top }) => [x(seconds), y(top)] as const),
      { 'stroke-width': 2.4 },
    ),
    ...readingMarks(readings, ({ seconds, top }) => [x(seconds), y(top)]),
    ...endLabels(labels, frame, size.width),
    ...residualStrip(trial, across, strip),
  ]);
}

const TARGET = { stroke: GRAY.text, 'stroke-width': 1.4 };

function minutesAxis({ curve, readings }: HeatTrialPictured, { left, right }: Edges): Axis {
  const times = [...curve, ...readings].map(({ seconds }) => seconds);
  return niceAxis([0, ...times], {
    of: inUnit('min'),
    title: 'minutes from switch-on',
    room: right - left,
    along: 'across',
    narrowest: 1,
  });
}

function temperatureAxis(
  { curve, readings, target, system }: HeatTrialPictured,
  { top, bottom }: Edges,
): Axis {
  const unit = MEASURES.temperature[system];
  const shown = [
    ...[...curve, ...readings].map((one) => one.top),
    ...(target === undefined ? [] : [target]),
  ];
  return niceAxis(shown, {
    of: inUnit(unit),
    title: UNITS[unit].label,
    room: bottom - top,
    along: 'down',
    narrowest: 10,
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
