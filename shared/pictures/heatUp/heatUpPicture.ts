import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, type Point, segment } from '../../elements/shape.ts';
import { MEASURES } from '../../units/measures.ts';
import { UNITS } from '../../units/units.ts';
import { endLabels } from '../chart/endLabels.ts';
import { eventLines } from '../chart/eventLines.ts';
import { bandShape, lineShape } from '../chart/lineShape.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Edges, inUnit, niceAxis, type PlotFrame, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { readingLegend, readingMarks } from '../chart/readingMarks.ts';
import type { HeatUp } from './heatUp.ts';
import { heatUpEvents, heatUpLabels, heatUpLegend } from './heatUpLabels.ts';
import { HEAT_UP_TITLE, heatUpText } from './heatUpText.ts';
import { hotBar, type Target } from './hotBar.ts';

/** Plate and mold top from switch-on, how sure the top is, its target, what boils, and what was read. */
export function heatUpPicture(heatUp: HeatUp, size: PictureSize): PlainElement {
  const { course, readings, target } = heatUp;
  const events = heatUpEvents(heatUp);
  const labels = heatUpLabels(heatUp);
  const items = [...heatUpLegend(heatUp), ...readingLegend(readings)];
  const { edges, key, room } = plotLayout({ legend: items, labels, events }, size);
  const frame = frameOf(heatUp, edges);
  const texts = { kind: heatUp.kind, title: HEAT_UP_TITLE, text: heatUpText(heatUp) };
  return pictureRoot(texts, size, [
    ...key,
    ...frame.drawn,
    ...bandShape(pointsOf(course, 'high', frame), pointsOf(course, 'low', frame)),
    ...(target === undefined ? [] : targetShapes(target, frame)),
    ...lineShape(pointsOf(course, 'plate', frame), {
      'stroke-width': 1.5,
      'stroke-dasharray': '7 4',
    }),
    ...lineShape(pointsOf(course, 'top', frame), { 'stroke-width': 2.6 }),
    ...eventLines(events, frame, room),
    ...readingMarks(readings, ({ seconds, top }) => [frame.x(seconds), frame.y(top)]),
    ...endLabels(labels, frame, size.width),
  ]);
}

function frameOf(heatUp: HeatUp, edges: Edges): PlotFrame {
  const { course, readings, target, system } = heatUp;
  const unit = MEASURES.temperature[system];
  const times = [
    0,
    ...[...course, ...readings].map(({ seconds }) => seconds),
    ...heatUpEvents(heatUp).map((event) => event.x),
  ];
  const shown = [
    ...course.flatMap(({ plate, top, low, high }) => [plate, top, low, high]),
    ...readings.map(({ top }) => top),
    ...(target === undefined ? [] : [target.top, target.boilingPoint]),
  ];
  return plotFrame(
    edges,
    niceAxis(times, {
      of: inUnit('min'),
      title: 'minutes from switch-on',
      room: edges.right - edges.left,
      along: 'across',
      narrowest: 1,
    }),
    niceAxis(shown, {
      of: inUnit(unit),
      title: UNITS[unit].label,
      room: edges.bottom - edges.top,
      along: 'down',
      narrowest: 10,
    }),
  );
}

function pointsOf(
  course: HeatUp['course'],
  of: 'plate' | 'top' | 'low' | 'high',
  { x, y }: PlotFrame,
): readonly Point[] {
  return course.map((sample) => [x(sample.seconds), y(sample[of])]);
}

/** The lines that the top is held against, and when it may be hot at the earliest and the latest. */
function targetShapes(
  { top, boilingPoint, band }: Target,
  { x, y, edges: { left, right } }: PlotFrame,
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
