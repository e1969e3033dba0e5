import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, textShape } from '../../elements/shape.ts';
import { stopwatchText } from '../../words/quantityText.ts';
import { textsWidth } from '../chart/fitText.ts';
import { legend } from '../chart/legend.ts';
import { linearScale } from '../chart/linearScale.ts';
import { pictureRoot } from '../chart/pictureRoot.ts';
import { clockTicks } from './clockTicks.ts';
import type { LayerTimeline } from './layerTimeline.ts';
import { LAYER_TIMELINE_TITLE, layerTimelineText } from './layerTimelineText.ts';
import { openTimeText, rowTexts, windowLineText } from './rowTexts.ts';
import { timelineLegend } from './timelineLegend.ts';
import { timelineRow } from './timelineRow.ts';
import { timelineSpan } from './timelineSpan.ts';

/** Height of a layer's row, between rows, and of the axis below them [px]. */
const ROW = 44;
const GAP = 10;
const AXIS = 38;
/** Room of one label of the axis [px]. */
const TICK_ROOM = 56;
/** Below this there is no room for words behind the rows; those below the picture must do [px]. */
const NARROW = 480;

/** One round: each layer's pour over the cavities within the time in which it may follow the layer below. */
export function layerTimelinePicture(timeline: LayerTimeline, width: number): PlainElement {
  const { layers } = timeline;
  const key = legend(timelineLegend(timeline), { left: 8, top: 4, width: width - 16 });
  const { left, right } = sidesOf(timeline, width);
  const rowTop = (index: number) => key.height + GAP + index * (ROW + GAP);
  const bottom = rowTop(layers.length);
  const span = timelineSpan(timeline);
  const x = linearScale([0, span], [left, right]);
  const ticks = clockTicks(span, Math.max(3, Math.floor((right - left) / TICK_ROOM)));
  const rows = layers.map((layer, index) => {
    const top = rowTop(index);
    return [
      ...timelineRow(layer, layers[index - 1], { x, right, top, bottom: top + ROW }),
      ...rowTexts(layer, { left, right, top, width }),
    ];
  });
  const middle = { anchor: 'middle', size: FONT.small } as const;
  const texts = {
    kind: timeline.kind,
    title: LAYER_TIMELINE_TITLE,
    text: layerTimelineText(timeline),
  };
  return pictureRoot(texts, { width, height: bottom + AXIS }, [
    ...ticks.map((tick) => segment([x(tick), rowTop(0)], [x(tick), bottom], { stroke: GRAY.grid })),
    ...key.drawn,
    ...rows.flat(),
    segment([left, bottom], [right, bottom]),
    ...ticks.map((tick) => textShape(x(tick), bottom + 15, stopwatchText(tick), middle)),
    textShape(
      (left + right) / 2,
      bottom + 32,
      'stopwatch from the first pour of the round',
      middle,
    ),
  ]);
}

/** Left and right end of the rows: what the words on either side leave. */
function sidesOf({ layers }: LayerTimeline, width: number) {
  const most = width * 0.28;
  const names = layers.flatMap((layer) => [layer.name, openTimeText(layer)]);
  const behind = width < NARROW ? 0 : Math.min(most, 22 + textsWidth(layers.map(windowLineText)));
  return { left: Math.min(most, 12 + textsWidth(names)), right: width - Math.max(20, behind) };
}
