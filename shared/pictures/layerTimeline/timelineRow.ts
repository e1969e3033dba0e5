import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, outline, type Point, segment } from '../../elements/shape.ts';
import type { Scale } from '../chart/linearScale.ts';
import { hatched, type Strip } from './hatched.ts';
import { type Follow, followOf, type TimelineLayer } from './layerTimeline.ts';

/** Where a row is drawn: its upper edge stands for the first cavity, its lower for the last. */
export interface RowPlace {
  readonly x: Scale;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How the pour of a layer is drawn, and the moment from which it no longer moves. */
export const POUR_LINE = { stroke: GRAY.text, 'stroke-width': 4, 'stroke-linecap': 'round' };
export const CLOSED_LINE = { stroke: GRAY.text, 'stroke-width': 1.4, 'stroke-dasharray': '4 3' };

/** One layer of the timeline: when it may be poured, when it is, and until when it moves. */
export function timelineRow(
  layer: TimelineLayer,
  below: TimelineLayer | undefined,
  place: RowPlace,
): readonly PlainElement[] {
  const { top, bottom, right } = place;
  const { run, openTime } = layer;
  const pour = slanted(run, 0, place);
  const set = openTime.kind === 'seconds' ? slanted(run, openTime.seconds, place) : undefined;
  const follow = below === undefined ? undefined : followOf(layer);
  return [
    ...(follow === undefined || below === undefined ? [] : windowShapes(follow, below.run, place)),
    ...(set === undefined || set[0][0] >= right
      ? []
      : [
          segment(set[0], atRight(set, right), { stroke: '#fff', 'stroke-width': 4 }),
          segment(set[0], atRight(set, right), CLOSED_LINE),
        ]),
    segment(pour[0], pour[1], POUR_LINE),
    segment([place.x(0), bottom], [right, bottom], { stroke: GRAY.grid }),
    segment([place.x(0), top], [right, top], { stroke: GRAY.grid }),
  ];
}

type Edge = readonly [upper: Point, lower: Point];
type Run = TimelineLayer['run'];

/** A moment counted from the pour of each cavity, as a slanted line over the row. */
function slanted({ firstAt, lastAt }: Run, after: number, { x, top, bottom }: RowPlace): Edge {
  return [
    [x(firstAt + after), top],
    [x(lastAt + after), bottom],
  ];
}

/** The lower end of a slanted line, drawn back to the right edge of the plot where it lies beyond. */
function atRight([[x1, y1], [x2, y2]]: Edge, right: number): Point {
  if (x2 <= right) return [x2, y2];
  return [right, y1 + ((right - x1) / (x2 - x1)) * (y2 - y1)];
}

function windowShapes(follow: Follow, run: Run, place: RowPlace): readonly PlainElement[] {
  const { sure } = follow;
  const outer = strip(follow, run, place);
  const inner = sure === undefined ? undefined : strip(sure, run, place);
  const unsure =
    inner === undefined
      ? [outer]
      : [
          { from: outer.from, to: inner.from },
          { from: inner.to, to: outer.to },
        ].filter(({ from, to }) => to[0][0] - from[0][0] > 1 || to[1][0] - from[1][0] > 1);
  return [
    ...(inner === undefined ? [] : [filled(inner, GRAY.band)]),
    ...unsure.flatMap((one) => [filled(one, '#fff'), hatched(one)]),
    ...(follow.to === undefined ? [arrow(place)] : []),
  ];
}

/** A window over the row, cut at the right edge of the plot. */
function strip(
  { from, to }: { readonly from: number; readonly to?: number },
  run: Run,
  place: RowPlace,
): Strip {
  const { right, top, bottom } = place;
  const cut = ([[x1, y1], [x2, y2]]: Edge): Edge => [
    [Math.min(x1, right), y1],
    [Math.min(x2, right), y2],
  ];
  const end: Edge = [
    [right, top],
    [right, bottom],
  ];
  return {
    from: cut(slanted(run, from, place)),
    to: to === undefined ? end : cut(slanted(run, to, place)),
  };
}

function filled({ from, to }: Strip, fill: string): PlainElement {
  return outline([from[0], to[0], to[1], from[1]], {
    fill,
    stroke: GRAY.line,
    'stroke-width': 0.8,
  });
}

/** The window goes on: a head beyond the plot. */
function arrow({ right, top, bottom }: RowPlace): PlainElement {
  const middle = (top + bottom) / 2;
  const half = Math.min(7, (bottom - top) / 2);
  return outline(
    [
      [right, middle - half],
      [right + half * 1.2, middle],
      [right, middle + half],
    ],
    { fill: GRAY.line },
  );
}
