import { line } from 'd3-shape';
import type { PlainElement } from '../runSheet/plainElement.ts';
import { sayTemperature } from '../runSheet/say.ts';
import { fromEngine } from '../units/convert.ts';
import { MEASURES } from '../units/measures.ts';
import { UNITS } from '../units/units.ts';
import { endLabels } from './endLabels.ts';
import { textWidth } from './fitText.ts';
import { type HeatTrialPictured, trialResiduals } from './heatTrial.ts';
import { legend } from './legend.ts';
import { mark } from './marks.ts';
import { type PictureSize, pictureRoot } from './pictureRoot.ts';
import { type Axis, type Edges, niceAxis, type PlotFrame, plotFrame } from './plotFrame.ts';
import { readingLegend, readingMarks } from './readingMarks.ts';
import { FONT, GRAY, segment, shape, words } from './svg.ts';

/** Height of the strip of residuals, its axis with it [px]. */
const STRIP = 120;

/** Readings with the curve fitted to them, and below what the curve leaves over. */
export function heatTrialPicture(trial: HeatTrialPictured, size: PictureSize): PlainElement {
  const { curve, readings, system, target } = trial;
  const key = legend(readingLegend(readings), { left: 8, top: 4, width: size.width - 16 });
  const labels = labelsOf(trial);
  const widest = Math.max(0, ...labels.map(({ text }) => textWidth(text, FONT.small)));
  const left = 46;
  const right = size.width - Math.min(widest + 18, size.width * 0.35);
  const unit = MEASURES.temperature[system];
  const degrees = (temperature: number) => fromEngine(temperature, unit);
  const across = niceAxis([0, ...[...curve, ...readings].map(({ seconds }) => seconds / 60)], {
    title: 'minutes from switch-on',
    room: right - left,
    along: 'across',
  });
  const edges = { left, right, top: key.height + 24, bottom: size.height - STRIP - 26 };
  const tops = [...curve, ...readings].map(({ top }) => degrees(top));
  const shown = target === undefined ? tops : [...tops, degrees(target)];
  const main = plotFrame(
    edges,
    { ...across, title: '', say: () => '' },
    niceAxis(shown, { title: UNITS[unit].label, room: edges.bottom - edges.top, along: 'down' }),
  );
  const y = (temperature: number) => main.y(degrees(temperature));
  const d = line<(typeof curve)[number]>()
    .x(({ seconds }) => main.x(seconds / 60))
    .y(({ top }) => y(top))
    .digits(1)([...curve]);
  return pictureRoot(trial, size, [
    ...key.drawn,
    ...main.drawn,
    ...(target === undefined
      ? []
      : [
          segment([left, y(target)], [right, y(target)], {
            stroke: GRAY.text,
            'stroke-width': 1.4,
          }),
        ]),
    ...(d === null
      ? []
      : [shape('path', { d, fill: 'none', stroke: GRAY.text, 'stroke-width': 2.4 })]),
    ...readingMarks(readings, ({ seconds, top }) => [main.x(seconds / 60), y(top)]),
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

function labelsOf({ curve, target, system }: HeatTrialPictured) {
  const last = curve[curve.length - 1];
  return [
    ...(last === undefined
      ? []
      : [{ y: last.top, text: `fitted ${sayTemperature(last.top, system)}`, isBold: true }]),
    ...(target === undefined
      ? []
      : [{ y: target, text: `must read ${sayTemperature(target, system, 'up')}` }]),
  ];
}

/** Reading less curve: stems from zero, as wide above as below. */
function residualStrip(
  trial: HeatTrialPictured,
  across: Axis,
  edges: Edges,
): readonly PlainElement[] {
  const unit = MEASURES.temperatureDifference[trial.system];
  const residuals = trialResiduals(trial).map((one) => ({
    ...one,
    residual: fromEngine(one.residual, unit),
  }));
  const most = Math.max(1, ...residuals.map(({ residual }) => Math.abs(residual)));
  const frame: PlotFrame = plotFrame(
    edges,
    across,
    niceAxis([-most, most], { title: '', room: edges.bottom - edges.top, along: 'down' }),
  );
  const trials = [...new Set(trial.readings.map((reading) => reading.trial))];
  return [
    ...frame.drawn,
    segment([edges.left, frame.y(0)], [edges.right, frame.y(0)], { stroke: GRAY.text }),
    ...residuals.flatMap((reading) => {
      const x = frame.x(reading.seconds / 60);
      return [
        segment([x, frame.y(0)], [x, frame.y(reading.residual)], { 'stroke-width': 1.6 }),
        mark([x, frame.y(reading.residual)], trials.indexOf(reading.trial)),
      ];
    }),
    words(edges.left, edges.top - 7, `reading less curve, ${UNITS[unit].label}`, {
      size: FONT.small,
    }),
  ];
}
