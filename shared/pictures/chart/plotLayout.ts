import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT } from '../../elements/shape.ts';
import { type EventLine, eventsHeight } from './eventLines.ts';
import { textWidth } from './fitText.ts';
import { type LegendItem, legend } from './legend.ts';
import type { PictureSize } from './pictureRoot.ts';
import type { Edges } from './plotFrame.ts';

/** What stands around a plot. */
interface Around {
  readonly legend: readonly LegendItem[];
  /** Named at the right */
  readonly labels: readonly { readonly text: string }[];
  /** Named above the plot */
  readonly events: readonly EventLine[];
}

interface PlotLayout {
  readonly edges: Edges;
  readonly key: readonly PlainElement[];
  /** Where the names of events may stand */
  readonly room: { readonly highest: number; readonly left: number; readonly right: number };
}

/** Room of the ticks' labels at the left, of the axis below, and of the title of the axis at the left [px]. */
const LEFT = 50;
const BELOW = 40;
const TITLE = 26;
/** Names at the right may take this share of the width; longer ones are cut. */
const MOST = 0.4;

/** The edges of a plot: what its legend, its events and the names at its right leave. */
export function plotLayout(
  { legend: items, labels, events }: Around,
  size: PictureSize,
): PlotLayout {
  const { width, height } = size;
  const key = legend(items, { left: 8, top: 4, width: width - 16 });
  const widest = Math.max(0, ...labels.map(({ text }) => textWidth(text, FONT.small)));
  return {
    edges: {
      left: LEFT,
      right: width - Math.min(widest + 18, width * MOST),
      top: key.height + eventsHeight(events.length) + TITLE,
      bottom: height - BELOW,
    },
    key: key.drawn,
    room: { highest: key.height + 4, left: 4, right: width - 4 },
  };
}
