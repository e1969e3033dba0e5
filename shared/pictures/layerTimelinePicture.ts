import type { PlainElement } from '../runSheet/plainElement.ts';
import { sayStopwatch } from '../runSheet/say.ts';
import { clockTicks } from './clockTicks.ts';
import type { LayerTimeline } from './layerTimeline.ts';
import { layerTimelineWords } from './layerTimelineWords.ts';
import { legend } from './legend.ts';
import { linearScale } from './linearScale.ts';
import { FONT, GRAY, picture, segment, words } from './svg.ts';
import { openWords, rowWords, widest, windowWords } from './timelineLabels.ts';
import { TIMELINE_LEGEND } from './timelineLegend.ts';
import { timelineRow } from './timelineRow.ts';
import { timelineSpan } from './timelineSpan.ts';

/** Height of one layer's row [px]; a small picture keeps names and bars only. */
const ROW = { plain: 44, small: 14 } as const;
const AXIS = { plain: 38, small: 15 } as const;
const GAP = { plain: 10, small: 3 } as const;

export type TimelineLooks = keyof typeof ROW;

interface TimelineSize {
  readonly width: number;
  readonly looks: TimelineLooks;
}

/** One round: each layer's pour over the cavities within the time in which it may follow the layer below. */
export function layerTimelinePicture(
  timeline: LayerTimeline,
  { width, looks }: TimelineSize,
): PlainElement {
  const { layers } = timeline;
  const isPlain = looks === 'plain';
  const key = legend(isPlain ? TIMELINE_LEGEND : [], { left: 8, top: 4, width: width - 16 });
  const { left, right } = sidesOf(timeline, { width, looks });
  const rowTop = (index: number) => key.height + GAP[looks] + index * (ROW[looks] + GAP[looks]);
  const bottom = rowTop(layers.length);
  const span = timelineSpan(timeline);
  const x = linearScale([0, span], [left, right]);
  const ticks = clockTicks(span, Math.max(3, Math.floor((right - left) / TICK_ROOM)));
  const rows = layers.map((layer, index) => {
    const top = rowTop(index);
    const place = { x, right, top, bottom: top + ROW[looks], weight: isPlain ? 4 : 3 };
    return [
      ...timelineRow(layer, layers[index - 1], place),
      ...rowWords(layer, { left, right, top, width, looks }),
    ];
  });
  return picture(
    {
      kind: 'layer-timeline',
      title: 'One round, layer by layer',
      alternative: layerTimelineWords(timeline),
    },
    { width, height: bottom + AXIS[looks] },
    [
      ...ticks.map((tick) =>
        segment([x(tick), rowTop(0)], [x(tick), bottom], { stroke: GRAY.grid }),
      ),
      ...key.drawn,
      ...rows.flat(),
      segment([left, bottom], [right, bottom]),
      ...ticks.map((tick) =>
        words(x(tick), bottom + (isPlain ? 15 : 12), sayStopwatch(tick), AXIS_WORDS),
      ),
      isPlain
        ? words((left + right) / 2, bottom + 32, AXIS_TITLE, AXIS_WORDS)
        : words(2, bottom + 12, 'min:s', { size: FONT.small }),
    ],
  );
}

const AXIS_WORDS = { anchor: 'middle', size: FONT.small } as const;
const AXIS_TITLE = 'minutes and seconds from the first pour of the round';

/** Below this there is no room for words beside the rows [px]. */
const NARROW = 480;
/** Room of one label of the axis [px]. */
const TICK_ROOM = 56;
/** Room of the small picture's unit before its first label [px]. */
const UNIT_ROOM = 58;

/** Left and right end of the rows: what the words on either side leave. */
function sidesOf({ layers }: LayerTimeline, { width, looks }: TimelineSize) {
  const names = layers.map(({ name }) => name);
  const most = width * 0.28;
  if (looks === 'small')
    return { left: Math.max(UNIT_ROOM, Math.min(most, 12 + widest(names))), right: width - 12 };
  return {
    left: Math.min(most, 12 + widest([...names, ...layers.map(openWords)])),
    // In a narrow picture the words below it must do.
    right:
      width -
      (width < NARROW ? 20 : Math.max(20, Math.min(most, 22 + widest(layers.map(windowWords))))),
  };
}
