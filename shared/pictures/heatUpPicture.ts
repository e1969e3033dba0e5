import { area, line } from 'd3-shape';
import type { PlainElement } from '../runSheet/plainElement.ts';
import { fromEngine } from '../units/convert.ts';
import { MEASURES } from '../units/measures.ts';
import { UNITS } from '../units/units.ts';
import { endLabels } from './endLabels.ts';
import { eventLines, eventsHeight } from './eventLines.ts';
import { textWidth } from './fitText.ts';
import type { HeatUp } from './heatUp.ts';
import { eventsOf, hotBar, labelsOf, legendOf, type Target } from './heatUpLabels.ts';
import { legend } from './legend.ts';
import { type PictureSize, pictureRoot } from './pictureRoot.ts';
import { type Edges, niceAxis, type PlotFrame, plotFrame } from './plotFrame.ts';
import { readingLegend, readingMarks } from './readingMarks.ts';
import { FONT, GRAY, segment, shape } from './svg.ts';

type Course = HeatUp['course'];

/** Plate and mold top from switch-on, how sure the top is, its target, what boils, and what was read. */
export function heatUpPicture(heatUp: HeatUp, size: PictureSize): PlainElement {
  const { course, readings, system, target } = heatUp;
  const unit = MEASURES.temperature[system];
  const degrees = (temperature: number) => fromEngine(temperature, unit);
  const events = target === undefined ? [] : eventsOf(target, heatUp);
  const labels = labelsOf(heatUp);
  const key = legend([...legendOf(heatUp), ...readingLegend(readings)], {
    left: 8,
    top: 4,
    width: size.width - 16,
  });
  const widest = Math.max(0, ...labels.map(({ text }) => textWidth(text, FONT.small)));
  const edges: Edges = {
    left: 46,
    right: size.width - Math.min(widest + 18, size.width * 0.4),
    top: key.height + eventsHeight(events.length) + 24,
    bottom: size.height - 40,
  };
  const shown = [
    ...course.flatMap(({ plate, top, low, high }) => [plate, top, low, high]),
    ...readings.map(({ top }) => top),
    ...(target === undefined ? [] : [target.top, target.boilingPoint]),
  ].map(degrees);
  const minutes = [
    0,
    ...course.map(({ seconds }) => seconds / 60),
    ...readings.map(({ seconds }) => seconds / 60),
    ...events.map(({ x }) => x),
  ];
  const frame = plotFrame(
    edges,
    niceAxis(minutes, {
      title: 'minutes from switch-on',
      room: edges.right - edges.left,
      along: 'across',
    }),
    niceAxis(shown, {
      title: UNITS[unit].label,
      room: edges.bottom - edges.top,
      along: 'down',
    }),
  );
  const y = (temperature: number) => frame.y(degrees(temperature));
  const drawn = [
    ...bandShape(course, { ...frame, y }),
    ...(target === undefined ? [] : targetShapes(target, edges, { ...frame, y })),
    ...curveShapes(course, { ...frame, y }),
    ...eventLines(
      events.map(({ x, text }) => ({ x: frame.x(x), text })),
      edges,
      { highest: key.height + 4, left: 4, right: size.width - 4 },
    ),
    ...readingMarks(readings, ({ seconds, top }) => [frame.x(seconds / 60), y(top)]),
    ...endLabels(
      labels.map((label) => ({ ...label, y: y(label.y) })),
      edges,
      size.width,
    ),
  ];
  return pictureRoot(heatUp, size, [...key.drawn, ...frame.drawn, ...drawn]);
}

function bandShape(course: Course, { x, y }: PlotFrame): readonly PlainElement[] {
  const band = area<Course[number]>()
    .x(({ seconds }) => x(seconds / 60))
    .y0(({ low }) => y(low))
    .y1(({ high }) => y(high))
    .digits(1)([...course]);
  return band === null ? [] : [shape('path', { d: band, fill: GRAY.band })];
}

function curveShapes(course: Course, { x, y }: PlotFrame): readonly PlainElement[] {
  const curve = (of: 'plate' | 'top') =>
    line<Course[number]>()
      .x(({ seconds }) => x(seconds / 60))
      .y((sample) => y(sample[of]))
      .digits(1)([...course]) ?? '';
  if (course.length === 0) return [];
  return [
    shape('path', {
      d: curve('plate'),
      fill: 'none',
      stroke: GRAY.text,
      'stroke-width': 1.5,
      'stroke-dasharray': '7 4',
    }),
    shape('path', { d: curve('top'), fill: 'none', stroke: GRAY.text, 'stroke-width': 2.6 }),
  ];
}

/** The lines that the top is held against, and when it may be hot at the earliest and the latest. */
function targetShapes(
  { top, boilingPoint, band }: Target,
  { left, right }: Edges,
  { x, y }: PlotFrame,
): readonly PlainElement[] {
  const isApart = Math.abs(y(top) - y(boilingPoint)) > 1;
  const boils = { 'stroke-dasharray': '2 3', stroke: GRAY.text };
  const low = Math.min(x((band?.low ?? 0) / 60), right);
  const high = band?.high === undefined ? right : Math.min(x(band.high / 60), right);
  return [
    segment([left, y(top)], [right, y(top)], { stroke: GRAY.text, 'stroke-width': 1.4 }),
    ...(isApart ? [segment([left, y(boilingPoint)], [right, y(boilingPoint)], boils)] : []),
    ...(band === undefined ? [] : [hotBar(low, high, y(top))]),
  ];
}
