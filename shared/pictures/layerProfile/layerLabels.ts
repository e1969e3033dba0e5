import { GRAY, segment } from '../../elements/shape.ts';
import { durationText, temperatureText } from '../../words/quantityText.ts';
import type { EndLabel } from '../chart/endLabels.ts';
import type { EventLine } from '../chart/eventLines.ts';
import { type LegendItem, lineSwatch } from '../chart/legend.ts';
import { pointMark } from '../chart/pointMark.ts';
import type { LayerProfile } from './layerProfile.ts';

/** A line style for each moment; later ones begin again. */
const DASHES = ['1 0', '8 4', '2 3', '10 3 2 3', '5 2', '1 5'] as const;

/** How the curve of a moment looks. */
export function profileLine(index: number) {
  return {
    fill: 'none',
    stroke: GRAY.text,
    'stroke-width': 2,
    'stroke-dasharray': DASHES[index % DASHES.length] ?? DASHES[0],
  };
}

/** Temperatures that matter, as upright lines; x in degC. */
export function limitEvents({
  setTemperature,
  bondTemperature,
  system,
}: LayerProfile): readonly EventLine[] {
  const say = (temperature: number) => temperatureText(temperature, system);
  return [
    { x: setTemperature, text: `sets below ${say(setTemperature)}` },
    { x: bondTemperature, text: `layers bond where they meet above ${say(bondTemperature)}` },
  ];
}

/** Names of the layers at their middles; y in m. */
export function layerLabels({ jointHeights, names }: LayerProfile): readonly EndLabel[] {
  return jointHeights.map((top, index) => ({
    y: ((jointHeights[index - 1] ?? 0) + top) / 2,
    text: names[index] ?? '',
  }));
}

/** Which curve is which moment, and what the marks at the joints are. */
export function profileLegend({ profiles, joints }: LayerProfile): readonly LegendItem[] {
  const moments = profiles.map(
    ({ time }, index): LegendItem => ({
      draw: lineSwatch(profileLine(index)),
      text: `after ${durationText(time)}`,
    }),
  );
  if (joints.length === 0) return moments;
  const joint: LegendItem = {
    draw: (x, y) => [
      segment([x, y], [x + 24, y], { stroke: GRAY.text, 'stroke-width': 4 }),
      pointMark([x + 12, y], 3),
    ],
    text: 'where layers meet, as the upper one lands',
  };
  return [...moments, joint];
}
