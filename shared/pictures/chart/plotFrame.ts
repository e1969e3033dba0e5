import { extent, tickStep, ticks } from 'd3-array';
import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, textShape } from '../../elements/shape.ts';
import { formatFixed } from '../../units/formatPlain.ts';
import { fromEngine } from '../../units/toEngine.ts';
import type { UnitName } from '../../units/units.ts';
import { linearScale, type Scale } from './linearScale.ts';

/** Edges of the plot within the picture [px]. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** One axis: what it runs over in the user's unit, its ticks and what they are called. */
export interface Axis {
  /** From a value of the picture to what the axis counts in, see {@link inUnit}; the value itself where it is left out. */
  readonly of?: (value: number) => number;
  readonly domain: readonly [low: number, high: number];
  readonly ticks: readonly number[];
  readonly tickText: (tick: number) => string;
  /** With the unit: `minutes from switch-on`. */
  readonly title: string;
}

/** The scales take values of the picture, as it holds them. */
export interface PlotFrame {
  readonly edges: Edges;
  readonly x: Scale;
  readonly y: Scale;
  readonly drawn: readonly PlainElement[];
}

/** Room of one tick's label along each axis [px]. */
const TICK_ROOM = { across: 64, down: 34 };

interface AxisWanted extends Pick<Axis, 'of'> {
  readonly title: string;
  /** Length on paper [px] */
  readonly room: number;
  readonly along: keyof typeof TICK_ROOM;
  /** At least this much is shown, in the unit of the values */
  readonly narrowest: number;
}

/** From a value of the engine to the unit of an axis. */
export function inUnit(unit: UnitName): (value: number) => number {
  return (value) => fromEngine(value, unit);
}

/** An axis over the values, widened to whole ticks. */
export function niceAxis(
  values: readonly number[],
  { of = asItIs, title, room, along, narrowest }: AxisWanted,
): Axis {
  const [least = 0, greatest = 0] = extent(values, of);
  const count = Math.max(3, Math.floor(room / TICK_ROOM[along]));
  const most = Math.max(greatest, least + narrowest);
  const step = tickStep(least, most, count);
  const domain = [Math.floor(least / step) * step, Math.ceil(most / step) * step] as const;
  const places = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const say = (tick: number) => formatFixed(tick, places);
  return { of, domain, ticks: ticks(domain[0], domain[1], count), tickText: say, title };
}

/** Axes with their ticks, titles and a light grid, and the scales to draw by. */
export function plotFrame(edges: Edges, across: Axis, up: Axis): PlotFrame {
  const { left, right, top, bottom } = edges;
  const x = linearScale(across.domain, [left, right]);
  const y = linearScale(up.domain, [bottom, top]);
  const grid = { stroke: GRAY.grid };
  const small = { size: FONT.small };
  const drawn = [
    ...across.ticks.flatMap((tick) => [
      segment([x(tick), top], [x(tick), bottom], grid),
      textShape(x(tick), bottom + 15, across.tickText(tick), { ...small, anchor: 'middle' }),
    ]),
    ...up.ticks.flatMap((tick) => [
      segment([left, y(tick)], [right, y(tick)], grid),
      textShape(left - 6, y(tick) + 4, up.tickText(tick), { ...small, anchor: 'end' }),
    ]),
    segment([left, bottom], [right, bottom]),
    segment([left, top], [left, bottom]),
    textShape((left + right) / 2, bottom + 32, across.title, { ...small, anchor: 'middle' }),
    textShape(4, top - 11, up.title, small),
  ];
  return { edges, x: scaleOf(across, x), y: scaleOf(up, y), drawn };
}

function scaleOf({ of = asItIs }: Axis, place: Scale): Scale {
  return (value) => place(of(value));
}

function asItIs(value: number): number {
  return value;
}
