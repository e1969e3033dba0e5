import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { PATTERNS } from '../../shared/book/tables/patterns.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'pattern',
  'version',
  'layerOrder',
  'layer',
  'share',
  'fillMark',
  'base',
  'pourTemperature',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof PATTERNS, typeof COLUMNS>[] = [
  ['Slate over pearl', 1, 1, 'belly', null, 0.4, 'Plastisol medium'],
  ['Slate over pearl', 1, 2, 'back', null, 1, 'Plastisol medium'],
  ['Moss over sand', 1, 1, 'belly', 0.45, null, 'Plastisol soft', null, 'Salt in the belly only.'],
  ['Moss over sand', 1, 2, 'back', 0.55, null, 'Plastisol soft'],
  ['Dusk line', 1, 1, 'belly', null, 0.35, 'Plastisol medium'],
  ['Dusk line', 1, 2, 'line', null, 0.5, 'Plastisol medium', 335],
  ['Dusk line', 1, 3, 'back', null, 1, 'Plastisol medium'],
  ['Dusk line', 2, 1, 'belly', null, 0.35, 'Plastisol medium', null, 'Less white, a little pearl.'],
  ['Dusk line', 2, 2, 'line', null, 0.48, 'Plastisol medium', 335],
  ['Dusk line', 2, 3, 'back', null, 1, 'Plastisol medium'],
  ['Copper vein', 1, 1, 'belly', 0.4, null, 'Plastisol medium'],
  ['Copper vein', 1, 2, 'vein', 0.15, null, 'Plastisol medium', 335, 'Stir between pours, the mica sinks.'],
  ['Copper vein', 1, 3, 'back', 0.45, null, 'Plastisol medium'],
  ['River stone', 1, 1, 'belly', null, 0.25, 'Plastisol medium'],
  ['River stone', 1, 2, 'stone', null, 0.4, 'Plastisol medium', 335],
  ['River stone', 1, 3, 'line', null, 0.6, 'Plastisol medium', 335],
  ['River stone', 1, 4, 'back', null, 1, 'Plastisol medium'],
  ['Night glass', 1, 1, 'belly', 0.35, null, 'Plastisol soft'],
  ['Night glass', 1, 2, 'core', 0.25, null, 'Plastisol soft', 335, 'Glitter goes in last.'],
  ['Night glass', 1, 3, 'back', 0.4, null, 'Plastisol soft'],
];

/** Invented patterns, some by fill mark and some by share. °F. */
export function demoPatterns(): readonly TypedRow<typeof PATTERNS>[] {
  return typedRows<typeof PATTERNS, typeof COLUMNS>(COLUMNS, LINES);
}
