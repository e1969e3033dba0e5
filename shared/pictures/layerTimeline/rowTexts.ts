import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, textShape } from '../../elements/shape.ts';
import { countText, durationText } from '../../words/quantityText.ts';
import { fitText, textWidth } from '../chart/fitText.ts';
import type { TimelineLayer } from './layerTimeline.ts';

/** Where the words of a row go [px]. */
interface RowRoom {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly width: number;
}

/** Name and open time before the row, its window behind it where there is room. */
export function rowTexts(
  layer: TimelineLayer,
  { left, right, top, width }: RowRoom,
): readonly PlainElement[] {
  const room = left - 10;
  const beside = width - right - 14;
  return [
    textShape(6, top + 17, fitText(layer.name, room, FONT.plain), { isBold: true }),
    textShape(6, top + 34, fitText(openTimeText(layer), room, FONT.small), { size: FONT.small }),
    ...(beside < 40 ? [] : windowLines(layer)).map((line, index) =>
      textShape(right + 12, top + 17 + index * 17, fitText(line, beside, FONT.small), {
        size: FONT.small,
      }),
    ),
  ];
}

/** How long a layer stays open, and the stops of its pour. */
export function openTimeText({ openTime, run }: TimelineLayer): string {
  const open =
    openTime.kind === 'stays open'
      ? 'stays open'
      : `open ${durationText(openTime.seconds, 'down')}`;
  return run.stops === 0 ? open : `${open}, ${countText(run.stops, 'stop')}`;
}

/** The longer of the two lines about a window. */
export function windowLineText(layer: TimelineLayer): string {
  const [first = '', second = ''] = windowLines(layer);
  return textWidth(first, 1) > textWidth(second, 1) ? first : second;
}

function windowLines({ window }: TimelineLayer): readonly string[] {
  if (window === undefined) return [];
  if (window.kind === 'none') return ['no window:', window.why];
  const start = `after ${durationText(window.earliest, 'up')}`;
  return window.kind === 'from'
    ? [start, 'any time']
    : [start, `until ${durationText(window.latest, 'down')}`];
}
