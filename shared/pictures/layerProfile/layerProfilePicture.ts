import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, type Point, segment } from '../../elements/shape.ts';
import { MEASURES } from '../../units/measures.ts';
import { UNITS } from '../../units/units.ts';
import { endLabels } from '../chart/endLabels.ts';
import { eventLines } from '../chart/eventLines.ts';
import { lineShape } from '../chart/lineShape.ts';
import { type PictureSize, pictureRoot } from '../chart/pictureRoot.ts';
import { type Edges, inUnit, niceAxis, type PlotFrame, plotFrame } from '../chart/plotFrame.ts';
import { plotLayout } from '../chart/plotLayout.ts';
import { pointMark } from '../chart/pointMark.ts';
import { layerLabels, limitEvents, profileLegend, profileLine } from './layerLabels.ts';
import type { LayerProfile } from './layerProfile.ts';
import { LAYER_PROFILE_TITLE, layerProfileText } from './layerProfileText.ts';

/** A stack is drawn as if it were at least this high [m]. */
const THINNEST = 0.001;

/** Temperature through the stack, mold face below, open face on top, at a few moments of the round. */
export function layerProfilePicture(profile: LayerProfile, size: PictureSize): PlainElement {
  const events = limitEvents(profile);
  const labels = layerLabels(profile);
  const { edges, key, room } = plotLayout({ legend: profileLegend(profile), labels, events }, size);
  const frame = frameOf(profile, edges);
  const { left, right } = edges;
  const texts = { kind: profile.kind, title: LAYER_PROFILE_TITLE, text: layerProfileText(profile) };
  return pictureRoot(texts, size, [
    ...key,
    ...frame.drawn,
    ...profile.jointHeights.map((height) =>
      segment([left, frame.y(height)], [right, frame.y(height)], { 'stroke-width': 1.4 }),
    ),
    ...eventLines(events, frame, room),
    ...profile.profiles.flatMap((one, index) =>
      lineShape(pointsOf(one, frame), profileLine(index)),
    ),
    ...profile.joints.flatMap((joint) => jointShapes(joint, frame)),
    ...endLabels(labels, frame, size.width),
  ]);
}

function frameOf(profile: LayerProfile, edges: Edges): PlotFrame {
  const { profiles, jointHeights, joints, setTemperature, bondTemperature, system } = profile;
  const unit = MEASURES.temperature[system];
  const length = MEASURES.length[system];
  const shown = [
    ...profiles.flatMap(({ temperatures }) => temperatures),
    ...joints.flatMap(({ contact, band }) => [
      contact,
      band?.low ?? contact,
      band?.high ?? contact,
    ]),
    setTemperature,
    bondTemperature,
  ];
  const heights = [0, ...jointHeights, ...profiles.flatMap((one) => one.heights)];
  return plotFrame(
    edges,
    niceAxis(shown, {
      of: inUnit(unit),
      title: `${UNITS[unit].label} in the plastic`,
      room: edges.right - edges.left,
      along: 'across',
      narrowest: 10,
    }),
    niceAxis(heights, {
      of: inUnit(length),
      title: `${UNITS[length].label} above the mold face`,
      room: edges.bottom - edges.top,
      along: 'down',
      narrowest: inUnit(length)(THINNEST),
    }),
  );
}

function pointsOf(
  { heights, temperatures }: LayerProfile['profiles'][number],
  { x, y }: PlotFrame,
): readonly Point[] {
  return heights.flatMap((height, place): readonly Point[] => {
    const temperature = temperatures[place];
    return temperature === undefined ? [] : [[x(temperature), y(height)]];
  });
}

/** Contact temperature as the upper layer lands, with its band. */
function jointShapes(
  { height, contact, band }: LayerProfile['joints'][number],
  { x, y }: PlotFrame,
): readonly PlainElement[] {
  const { low = contact, high = contact } = band ?? {};
  const looks = { stroke: GRAY.text, 'stroke-width': 4 };
  return [
    ...(band === undefined ? [] : [segment([x(low), y(height)], [x(high), y(height)], looks)]),
    pointMark([x(contact), y(height)], 3),
  ];
}
