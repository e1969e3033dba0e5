import type { NumberColumn } from '../column.ts';

/** Bad pieces of one kind. */
export function defectCount(heading: string, about: string): NumberColumn {
  return {
    kind: 'number',
    heading,
    about,
    width: 70,
    places: 0,
    bounds: { atLeast: 0, whole: true },
  };
}

/** Reading of the cup at a layer's pour. */
export function pourTemperature(layer: number): NumberColumn {
  return {
    kind: 'number',
    heading: `Pour ${layer}`,
    width: 75,
    places: 0,
    measure: 'temperature',
    bounds: { greaterThan: 20, atMost: 300 },
    about: `Cup temperature when layer ${layer} was poured.`,
  };
}

/** Wait between two layers. */
export function gapBefore(from: number): NumberColumn {
  return {
    kind: 'number',
    heading: `Gap ${from}-${from + 1}`,
    width: 70,
    places: 1,
    measure: 'minutes',
    bounds: { atLeast: 0, atMost: 43200 },
    about: `Minutes from pouring layer ${from} to pouring layer ${from + 1}.`,
  };
}
