import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, type Point, segment, shape, textShape } from '../../elements/shape.ts';
import type { ChartSignal } from '../../outcomes/quality/controlChart.ts';
import { barLanes } from '../chart/barLanes.ts';
import { fitText, textWidth } from '../chart/fitText.ts';

/** Signals named on a chart, the newest. */
const MOST = 6;
const LANE = 15;
const LINE = 16;

/** A signal with its number, and the lane above the plot that it stands in. */
interface PlacedSignal extends ChartSignal {
  readonly number: number;
  readonly lane: number;
}

export interface Lanes {
  readonly signals: readonly PlacedSignal[];
  /** Signals that are older than those named. */
  readonly more: number;
  /** What the lanes take up above the plot [px]. */
  readonly height: number;
}

/** Lays signals into as few lanes as keep their numbers and bars apart. */
export function signalLanes(signals: readonly ChartSignal[], x: (index: number) => number): Lanes {
  const newest = [...signals].sort((one, other) => one.to - other.to || one.from - other.from);
  const shown = newest.slice(-MOST);
  const { placed, lanes } = barLanes(shown, ({ from, to }) => [x(from) - 8, x(to) + 8]);
  return {
    signals: placed.map(({ item, lane }, index) => ({ ...item, number: index + 1, lane })),
    more: newest.length - shown.length,
    height: lanes * LANE,
  };
}

/** Numbers above the plot, each with a bar over its points and a fine line down to the last of them. */
export function drawLanes(
  { signals }: Lanes,
  { top, at }: { top: number; at: (index: number) => Point },
): readonly PlainElement[] {
  const lines = signals.map(({ to, lane }) => {
    const [x, y] = at(to);
    const from = top - lane * LANE - 4;
    return segment([x, from], [x, y], { 'stroke-dasharray': '1 3' });
  });
  const names = signals.flatMap(({ from, to, lane, number }) => {
    const [x] = at(to);
    const y = top - lane * LANE - 4;
    const bar =
      from === to
        ? []
        : [segment([at(from)[0], y - 5], [x, y - 5], { stroke: GRAY.text, 'stroke-width': 3 })];
    const middle = (at(from)[0] + x) / 2;
    return [
      ...bar,
      textShape(middle, y, String(number), { size: FONT.small, anchor: 'middle', isBold: true }),
    ];
  });
  return [...lines, ...names];
}

/** A ring and a full mark: a signal is told from other points without color. */
export function signalMark([cx, cy]: Point): PlainElement {
  return shape('g', {}, [
    shape('circle', { cx, cy, r: 6, fill: 'none', stroke: GRAY.text, 'stroke-width': 1.5 }),
    shape('circle', { cx, cy, r: 3.2, fill: GRAY.text }),
  ]);
}

/** The rules by number, below the plot; `height` is what they take up. */
export function signalList(
  { signals, more }: Lanes,
  labels: readonly string[],
  { left, top, width }: { left: number; top: number; width: number },
): { readonly drawn: readonly PlainElement[]; readonly height: number } {
  const texts = signals.map(({ number, rule, from, to }) => {
    const first = labels[from] ?? '';
    const where = from === to ? first : `${first} to ${labels[to] ?? ''}`;
    const short = `${number}. ${rule}: ${where}`;
    // What broke which rule matters more than where it began.
    return from === to || textWidth(short, FONT.small) <= width
      ? short
      : `${number}. ${rule}, to ${labels[to] ?? ''}`;
  });
  const all = more === 0 ? texts : [...texts, `and ${more} earlier`];
  const drawn = all.map((text, index) =>
    textShape(left, top + (index + 1) * LINE - 4, fitText(text, width, FONT.small), {
      size: FONT.small,
    }),
  );
  return { drawn, height: all.length * LINE };
}
