import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, segment, shape } from '../../elements/shape.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { endLabels } from '../chart/endLabels.ts';
import { eventLines } from '../chart/eventLines.ts';
import type { Scale } from '../chart/linearScale.ts';
import { linePath } from '../chart/linePath.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { pointMark } from '../chart/pointMark.ts';
import { layerLabels, limitEvents, profileLegend, profileLine } from './layerLabels.ts';
import type { LayerProfile } from './layerProfile.ts';

/** Temperature through the stack, mold face below, open face on top, at a few moments of the round. */
export function layerProfilePicture(profile: LayerProfile, size: PictureSize): PlainElement {
  const limits = limitEvents(profile);
  const labels = layerLabels(profile);
  const { edges, key, room } = plotLayout(
    { legend: profileLegend(profile), labels, events: limits },
    size,
  );
  const { x, y, drawn } = axesOf(profile, edges);
  return pictureRoot(profile, size, [
    ...key,
    ...drawn,
    ...profile.jointHeights.map((up) =>
      segment([edges.left, y(up)], [edges.right, y(up)], { 'stroke-width': 1.4 }),
    ),
    ...eventLines(
      limits.map((limit) => ({ ...limit, x: x(limit.x) })),
      edges,
      room,
    ),
    ...profile.profiles.map((one, index) => curve(one, index, { x, y })),
    ...profile.joints.flatMap((joint) => jointShapes(joint, { x, y })),
    ...endLabels(
      labels.map((label) => ({ ...label, y: y(label.y) })),
      edges,
      size.width,
    ),
  ]);
}

/** Scales from degC and from m, with their axes in the shop's units. */
function axesOf({ profiles, jointHeights, joints, system, ...limits }: LayerProfile, edges: Edges) {
  const unit = MEASURES.temperature[system];
  const height = MEASURES.length[system];
  const shown = [
    ...profiles.flatMap(({ temperatures }) => temperatures),
    ...joints.flatMap(({ contact, band }) => [
      contact,
      band?.low ?? contact,
      band?.high ?? contact,
    ]),
    limits.setTemperature,
    limits.bondTemperature,
  ];
  const heights = [0, ...jointHeights, ...profiles.flatMap((one) => one.heights)];
  const { left, right, top, bottom } = edges;
  const frame = plotFrame(
    edges,
    niceAxis(
      shown.map((one) => fromEngine(one, unit)),
      {
        title: `${UNITS[unit].label} in the plastic`,
        room: right - left,
        along: 'across',
        narrowest: 10,
      },
    ),
    niceAxis(
      heights.map((one) => fromEngine(one, height)),
      {
        title: `${UNITS[height].label} above the mold face`,
        room: bottom - top,
        along: 'down',
        narrowest: fromEngine(THINNEST, height),
      },
    ),
  );
  return {
    x: (temperature: number) => frame.x(fromEngine(temperature, unit)),
    y: (up: number) => frame.y(fromEngine(up, height)),
    drawn: frame.drawn,
  };
}

/** A stack is drawn as if it were at least this high [m]. */
const THINNEST = 0.001;

interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

function curve(
  { heights, temperatures }: LayerProfile['profiles'][number],
  index: number,
  { x, y }: Scales,
): PlainElement {
  const points = heights.flatMap((up, place): readonly [number, number][] => {
    const temperature = temperatures[place];
    return temperature === undefined ? [] : [[x(temperature), y(up)]];
  });
  return shape('path', { d: linePath(points) ?? 'M0,0', ...profileLine(index) });
}

/** Contact temperature as the upper layer lands, with its band. */
function jointShapes(
  { height, contact, band }: LayerProfile['joints'][number],
  { x, y }: Scales,
): readonly PlainElement[] {
  const { low = contact, high = contact } = band ?? {};
  const looks = { stroke: GRAY.text, 'stroke-width': 4 };
  return [
    ...(band === undefined ? [] : [segment([x(low), y(height)], [x(high), y(height)], looks)]),
    pointMark([x(contact), y(height)], 3),
  ];
}
