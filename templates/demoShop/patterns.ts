import type { PATTERNS } from '../../shared/book/tables/patterns.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented patterns, some by fill mark and some by share. °F. */
// biome-ignore format: one row a line
export const DEMO_PATTERNS: readonly TradeRow<typeof PATTERNS>[] = [
  { pattern: 'Slate over pearl', version: 1, layerOrder: 1, layer: 'belly', fillMark: 0.4, base: 'Plastisol medium' },
  { pattern: 'Slate over pearl', version: 1, layerOrder: 2, layer: 'back', fillMark: 1, base: 'Plastisol medium' },
  { pattern: 'Moss over sand', version: 1, layerOrder: 1, layer: 'belly', share: 0.45, base: 'Plastisol soft', notes: 'Salt in the belly only.' },
  { pattern: 'Moss over sand', version: 1, layerOrder: 2, layer: 'back', share: 0.55, base: 'Plastisol soft' },
  { pattern: 'Dusk line', version: 1, layerOrder: 1, layer: 'belly', fillMark: 0.35, base: 'Plastisol medium' },
  { pattern: 'Dusk line', version: 1, layerOrder: 2, layer: 'line', fillMark: 0.5, base: 'Plastisol medium', pourTemperature: 335 },
  { pattern: 'Dusk line', version: 1, layerOrder: 3, layer: 'back', fillMark: 1, base: 'Plastisol medium' },
  { pattern: 'Dusk line', version: 2, layerOrder: 1, layer: 'belly', fillMark: 0.35, base: 'Plastisol medium', notes: 'Less white, a little pearl.' },
  { pattern: 'Dusk line', version: 2, layerOrder: 2, layer: 'line', fillMark: 0.48, base: 'Plastisol medium', pourTemperature: 335 },
  { pattern: 'Dusk line', version: 2, layerOrder: 3, layer: 'back', fillMark: 1, base: 'Plastisol medium' },
  { pattern: 'Copper vein', version: 1, layerOrder: 1, layer: 'belly', share: 0.4, base: 'Plastisol medium' },
  { pattern: 'Copper vein', version: 1, layerOrder: 2, layer: 'vein', share: 0.15, base: 'Plastisol medium', pourTemperature: 335, notes: 'Stir between pours, the mica sinks.' },
  { pattern: 'Copper vein', version: 1, layerOrder: 3, layer: 'back', share: 0.45, base: 'Plastisol medium' },
  { pattern: 'River stone', version: 1, layerOrder: 1, layer: 'belly', fillMark: 0.25, base: 'Plastisol medium' },
  { pattern: 'River stone', version: 1, layerOrder: 2, layer: 'stone', fillMark: 0.4, base: 'Plastisol medium', pourTemperature: 335 },
  { pattern: 'River stone', version: 1, layerOrder: 3, layer: 'line', fillMark: 0.6, base: 'Plastisol medium', pourTemperature: 335 },
  { pattern: 'River stone', version: 1, layerOrder: 4, layer: 'back', fillMark: 1, base: 'Plastisol medium' },
  { pattern: 'Night glass', version: 1, layerOrder: 1, layer: 'belly', share: 0.35, base: 'Plastisol soft' },
  { pattern: 'Night glass', version: 1, layerOrder: 2, layer: 'core', share: 0.25, base: 'Plastisol soft', pourTemperature: 335, notes: 'Glitter goes in last.' },
  { pattern: 'Night glass', version: 1, layerOrder: 3, layer: 'back', share: 0.4, base: 'Plastisol soft' },
];
