import type { Table } from '../column.ts';

export const PATTERNS = {
  sheet: 'Patterns',
  about:
    'one layer of one version of a color pattern; a version is never edited, a change is a new version',
  columns: {
    pattern: {
      kind: 'text',
      heading: 'Pattern',
      width: 140,
      required: true,
      about: 'Name of the pattern.',
    },
    version: {
      kind: 'number',
      heading: 'Version',
      width: 65,
      places: 0,
      required: true,
      bounds: { atLeast: 1, whole: true },
      about: 'Version of the pattern; 1 for the first.',
    },
    layerOrder: {
      kind: 'number',
      heading: 'Layer order',
      width: 65,
      places: 0,
      required: true,
      bounds: { atLeast: 1, atMost: 5, whole: true },
      about: '1 is poured first.',
    },
    layer: {
      kind: 'text',
      heading: 'Layer',
      width: 100,
      required: true,
      about: 'Name of the layer, such as belly, vein, back.',
    },
    share: {
      kind: 'number',
      heading: 'Share',
      width: 75,
      places: 1,
      measure: 'fraction',
      bounds: { greaterThan: 0, atMost: 1 },
      about:
        'Share of the cavity’s volume. The shares of a pattern add up to 100 %. Leave blank if you give fill marks.',
    },
    fillMark: {
      kind: 'number',
      heading: 'Fill mark',
      width: 75,
      places: 1,
      measure: 'fraction',
      bounds: { greaterThan: 0, atMost: 1 },
      about:
        'Height of the layer’s surface as a share of the cavity depth; 100 % for the last layer.',
    },
    base: {
      kind: 'text',
      heading: 'Base',
      width: 140,
      required: true,
      refers: { sheet: 'Materials', column: 'material' },
      about: 'The plastisol of this layer, from Materials.',
    },
    pourTemperature: {
      kind: 'number',
      heading: 'Pour temperature',
      width: 95,
      places: 0,
      measure: 'temperature',
      bounds: { greaterThan: 100, atMost: 190 },
      about: 'Cup temperature at the pour; blank takes the shop’s setting.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;
