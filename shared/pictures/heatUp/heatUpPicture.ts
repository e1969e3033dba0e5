import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, segment, shape } from '../../elements/shape.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { type EndLabel, endLabels } from '../chart/endLabels.ts';
import { eventLines } from '../chart/eventLines.ts';
import type { Scale } from '../chart/linearScale.ts';
import { bandPath, linePath } from '../chart/linePath.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { readingLegend, readingMarks } from '../chart/readingMarks.ts';
import type { HeatUp } from './heatUp.ts';
import { heatUpEvents, heatUpLabels, heatUpLegend } from './heatUpLabels.ts';
import { hotBar, type Target } from './hotBar.ts';

type Course = HeatUp['course'];

/** Scales from seconds and from degC. */
interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

/** Plate and mold top from switch-on, how sure the top is, its target, what boils, and what was read. */
export function heatUpPicture(heatUp: HeatUp, size: PictureSize): PlainElement {
  const { course, readings, target } = heatUp;
  const events = heatUpEvents(heatUp);
  const labels = heatUpLabels(heatUp);
  const items = [...heatUpLegend(heatUp), ...readingLegend(readings)];
  const { edges, key, room } = plotLayout({ legend: items, labels, events }, size);
  const { drawn, ...scales } = axesOf(heatUp, edges);
  const { x, y } = scales;
  return pictureRoot(heatUp, size, [
    ...key,
    ...drawn,
    ...bandShape(course, scales),
    ...(target === undefined ? [] : targetShapes(target, edges, scales)),
    ...curveShapes(course, scales),
    ...eventLines(
      events.map((event) => ({ ...event, x: x(event.x) })),
      edges,
      room,
    ),
    ...readingMarks(readings, ({ seconds, top }) => [x(seconds), y(top)]),
    ...endLabels(
      labels.map((label) => placed(label, scales)),
      edges,
      size.width,
    ),
  ]);
}

function placed(label: EndLabel, { x, y }: Scales): EndLabel {
  return { ...label, y: y(label.y), ...(label.x === undefined ? {} : { x: x(label.x) }) };
}

function axesOf(heatUp: HeatUp, edges: Edges) {
  const { course, readings, target, system } = heatUp;
  const unit = MEASURES.temperature[system];
  const shown = [
    ...course.flatMap(({ plate, top, low, high }) => [plate, top, low, high]),
    ...readings.map(({ top }) => top),
    ...(target === undefined ? [] : [target.top, target.boilingPoint]),
  ];
  const times = [
    0,
    ...[...course, ...readings].map(({ seconds }) => seconds),
    ...heatUpEvents(heatUp).map((event) => event.x),
  ];
  const { left, right, top, bottom } = edges;
  const frame = plotFrame(
    edges,
    niceAxis(
      times.map((seconds) => fromEngine(seconds, 'min')),
      { title: 'minutes from switch-on', room: right - left, along: 'across', narrowest: 1 },
    ),
    niceAxis(
      shown.map((one) => fromEngine(one, unit)),
      { title: UNITS[unit].label, room: bottom - top, along: 'down', narrowest: 10 },
    ),
  );
  return {
    x: (seconds: number) => frame.x(fromEngine(seconds, 'min')),
    y: (temperature: number) => frame.y(fromEngine(temperature, unit)),
    drawn: frame.drawn,
  };
}

function bandShape(course: Course, scales: Scales): readonly PlainElement[] {
  const band = bandPath(pointsOf(course, 'high', scales), pointsOf(course, 'low', scales));
  return band === undefined ? [] : [shape('path', { d: band, fill: GRAY.band })];
}

function pointsOf(course: Course, of: 'plate' | 'top' | 'low' | 'high', { x, y }: Scales) {
  return course.map((sample) => [x(sample.seconds), y(sample[of])] as const);
}

function curveShapes(course: Course, scales: Scales): readonly PlainElement[] {
  const looks = { fill: 'none', stroke: GRAY.text };
  const plate = linePath(pointsOf(course, 'plate', scales));
  const top = linePath(pointsOf(course, 'top', scales));
  if (plate === undefined || top === undefined) return [];
  return [
    shape('path', { d: plate, ...looks, 'stroke-width': 1.5, 'stroke-dasharray': '7 4' }),
    shape('path', { d: top, ...looks, 'stroke-width': 2.6 }),
  ];
}

/** The lines that the top is held against, and when it may be hot at the earliest and the latest. */
function targetShapes(
  { top, boilingPoint, band }: Target,
  { left, right }: Edges,
  { x, y }: Scales,
): readonly PlainElement[] {
  const isApart = Math.abs(y(top) - y(boilingPoint)) > 1;
  const boils = { 'stroke-dasharray': '2 3', stroke: GRAY.text };
  const low = Math.min(x(band?.low ?? 0), right);
  const high = Math.min(band?.high === undefined ? right : x(band.high), right);
  return [
    segment([left, y(top)], [right, y(top)], { stroke: GRAY.text, 'stroke-width': 1.4 }),
    ...(isApart ? [segment([left, y(boilingPoint)], [right, y(boilingPoint)], boils)] : []),
    ...(band === undefined ? [] : [hotBar([low, high], y(top), high === right)]),
  ];
}
