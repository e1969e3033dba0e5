import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { MOLDS } from '../../shared/book/tables/molds.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'mold',
  'kind',
  'cavities',
  'cavityVolume',
  'pieceWeight',
  'profile',
  'cavityLength',
  'cavityWidth',
  'cavityDepth',
  'blockLength',
  'blockWidth',
  'blockHeight',
  'finish',
  'pourSeconds',
  'owned',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof MOLDS, typeof COLUMNS>[] = [
  ['Round stick 5 in', 'open', 8, 0.29, null, 'half-round', 5, 0.56, 0.28, 6.5, 8, 1.25, 'bare', 4, 2],
  ['Wedge tail 4.5 in', 'open', 6, 0.286, null, 'V', 4.5, 0.7, 0.4, 6, 7, 1.25, 'bare', 4, 2, 'Tail is thin: pour from the nose.'],
  ['Split minnow 4 in', 'two-piece', 6, 0.501, null, 'ellipse', 4, 0.5, 0.8, 6, 6.5, 1.75, 'bare', 6, 1, 'Snug the bolts again once the block is hot.'],
  ['Thin worm 6 in', 'open', 10, 0.227, null, 'half-round', 6, 0.44, 0.22, 7.5, 8.5, 1, 'anodized', 4, 2],
  ['Two-half stick 5.5 in', 'two-piece', 4, null, 0.552, 'ellipse', 5.5, 0.5, 0.5, 7, 4.5, 1.5, 'bare', 6, 2, 'Volume not measured yet; weighed 10 pieces.'],
];

/** Invented molds. Lengths in inches, volumes in fl oz, weights in oz. */
export function demoMolds(): readonly TypedRow<typeof MOLDS>[] {
  return typedRows<typeof MOLDS, typeof COLUMNS>(COLUMNS, LINES);
}
