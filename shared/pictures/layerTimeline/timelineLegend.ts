import { GRAY, outline, segment } from '../../elements/shape.ts';
import { bandSwatch, type LegendItem } from '../chart/legend.ts';
import { hatched } from './hatched.ts';
import { followOf, type LayerTimeline } from './layerTimeline.ts';
import { CLOSED_LINE, POUR_LINE } from './timelineRow.ts';

/** What the timeline's strips and lines mean, those that are there. */
export function timelineLegend({ layers }: LayerTimeline): readonly LegendItem[] {
  const follows = layers.flatMap((layer) => followOf(layer) ?? []);
  const isUnsure = follows.some(
    ({ from, to, sure }) => sure === undefined || sure.from !== from || sure.to !== to,
  );
  const closes = layers.some(({ openTime }) => openTime.kind === 'seconds');
  return [
    POUR,
    ...(follows.length > 0 ? [FOLLOWS] : []),
    ...(isUnsure ? [UNSURE] : []),
    ...(closes ? [CLOSED] : []),
  ];
}

const POUR: LegendItem = {
  draw: (x, y) => [segment([x + 6, y - 7], [x + 18, y + 7], POUR_LINE)],
  text: 'pour, first cavity to last',
};

const FOLLOWS: LegendItem = {
  draw: bandSwatch({ fill: GRAY.band, stroke: GRAY.line, 'stroke-width': 0.8 }),
  text: 'may follow the layer below',
};

const UNSURE: LegendItem = {
  draw: (x, y) => [
    outline(
      [
        [x, y - 6],
        [x + 24, y - 6],
        [x + 24, y + 6],
        [x, y + 6],
      ],
      { fill: '#fff', stroke: GRAY.line, 'stroke-width': 0.8 },
    ),
    hatched({
      from: [
        [x, y - 6],
        [x, y + 6],
      ],
      to: [
        [x + 24, y - 6],
        [x + 24, y + 6],
      ],
    }),
  ],
  text: 'may be too early or too late',
};

const CLOSED: LegendItem = {
  draw: (x, y) => [segment([x + 6, y - 7], [x + 18, y + 7], CLOSED_LINE)],
  text: 'closed, no longer moves',
};
