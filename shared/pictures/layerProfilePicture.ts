import { line } from 'd3-shape';
import type { PlainElement } from '../runSheet/plainElement.ts';
import { sayDuration, sayTemperature } from '../runSheet/say.ts';
import { fromEngine } from '../units/convert.ts';
import { MEASURES } from '../units/measures.ts';
import { UNITS } from '../units/units.ts';
import { type EndLabel, endLabels } from './endLabels.ts';
import { eventLines, eventsHeight } from './eventLines.ts';
import { textWidth } from './fitText.ts';
import type { LayerProfile } from './layerProfile.ts';
import { type LegendItem, legend } from './legend.ts';
import { type PictureSize, pictureRoot } from './pictureRoot.ts';
import { niceAxis, plotFrame } from './plotFrame.ts';
import { FONT, GRAY, segment, shape } from './svg.ts';

/** A line style for each moment; later ones begin again. */
const DASHES = ['1 0', '8 4', '2 3', '10 3 2 3', '5 2', '1 5'] as const;

/** Temperature through the stack, mold face below, open face on top, at a few moments of the round. */
export function layerProfilePicture(profile: LayerProfile, size: PictureSize): PlainElement {
  const { profiles, seams, names, system, setTemperature, bondTemperature } = profile;
  const unit = MEASURES.temperature[system];
  const height = MEASURES.length[system];
  const degrees = (temperature: number) => fromEngine(temperature, unit);
  const limits = [
    { at: setTemperature, text: `sets below ${sayTemperature(setTemperature, system)}` },
    { at: bondTemperature, text: `seams bond above ${sayTemperature(bondTemperature, system)}` },
  ];
  const key = legend(momentsOf(profile), { left: 8, top: 4, width: size.width - 16 });
  const labels: readonly EndLabel[] = seams.map((top, index) => ({
    y: ((seams[index - 1] ?? 0) + top) / 2,
    text: names[index] ?? '',
  }));
  const widest = Math.max(0, ...labels.map(({ text }) => textWidth(text, FONT.small)));
  const edges = {
    left: 52,
    right: size.width - Math.min(widest + 18, size.width * 0.3),
    top: key.height + eventsHeight(limits.length) + 24,
    bottom: size.height - 40,
  };
  const shown = profiles.flatMap(({ temperatures }) => temperatures).map(degrees);
  const heights = [...seams, ...profiles.flatMap((one) => one.heights)];
  const frame = plotFrame(
    edges,
    niceAxis([...shown, ...limits.map(({ at }) => degrees(at))], {
      title: `${UNITS[unit].label} in the plastic`,
      room: edges.right - edges.left,
      along: 'across',
    }),
    niceAxis([0, ...heights.map((one) => fromEngine(one, height))], {
      title: `${UNITS[height].label} above the mold face`,
      room: edges.bottom - edges.top,
      along: 'down',
    }),
  );
  const y = (up: number) => frame.y(fromEngine(up, height));
  const curves = profiles.map(({ heights: ups, temperatures }, index) => {
    const points = ups.map(
      (up, place) => [frame.x(degrees(temperatures[place] ?? 0)), y(up)] as const,
    );
    const d = line<readonly [number, number]>().digits(1)([...points]) ?? '';
    return shape('path', {
      d,
      fill: 'none',
      stroke: GRAY.text,
      'stroke-width': 2,
      'stroke-dasharray': DASHES[index % DASHES.length] ?? '1 0',
    });
  });
  const seamLines = seams.map((up) =>
    segment([edges.left, y(up)], [edges.right, y(up)], { 'stroke-width': 1.4 }),
  );
  return pictureRoot(profile, size, [
    ...key.drawn,
    ...frame.drawn,
    ...seamLines,
    ...eventLines(
      limits.map(({ at, text }) => ({ x: frame.x(degrees(at)), text })),
      edges,
      { highest: key.height + 4, left: 4, right: size.width - 4 },
    ),
    ...curves,
    ...endLabels(
      labels.map((label) => ({ ...label, y: y(label.y) })),
      edges,
      size.width,
    ),
  ]);
}

function momentsOf({ profiles }: LayerProfile): readonly LegendItem[] {
  return profiles.map(({ time }, index) => ({
    draw: (x, y) => [
      segment([x, y], [x + 24, y], {
        stroke: GRAY.text,
        'stroke-width': 2,
        'stroke-dasharray': DASHES[index % DASHES.length] ?? '1 0',
      }),
    ],
    text: `after ${sayDuration(time)}`,
  }));
}
