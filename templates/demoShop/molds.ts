import type { MOLDS } from '../../shared/book/tables/molds.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented molds. Lengths in inches, volumes in fl oz, weights in oz. */
// biome-ignore format: one row a line
export const DEMO_MOLDS: readonly TradeRow<typeof MOLDS>[] = [
  { mold: 'Round stick 5 in', kind: 'open', cavities: 8, cavityVolume: 0.29, profile: 'half-round', cavityLength: 5, cavityWidth: 0.56, cavityDepth: 0.28, blockLength: 6.5, blockWidth: 8, blockHeight: 1.25, finish: 'bare', pourSeconds: 4, owned: 2 },
  { mold: 'Wedge tail 4.5 in', kind: 'open', cavities: 6, cavityVolume: 0.286, profile: 'V', cavityLength: 4.5, cavityWidth: 0.7, cavityDepth: 0.4, blockLength: 6, blockWidth: 7, blockHeight: 1.25, finish: 'bare', pourSeconds: 4, owned: 2, notes: 'Tail is thin: pour from the nose.' },
  { mold: 'Split minnow 4 in', kind: 'two-piece', cavities: 6, cavityVolume: 0.501, profile: 'ellipse', cavityLength: 4, cavityWidth: 0.5, cavityDepth: 0.8, blockLength: 6, blockWidth: 6.5, blockHeight: 1.75, finish: 'bare', pourSeconds: 6, owned: 1, notes: 'Snug the bolts again once the block is hot.' },
  { mold: 'Thin worm 6 in', kind: 'open', cavities: 10, cavityVolume: 0.227, profile: 'half-round', cavityLength: 6, cavityWidth: 0.44, cavityDepth: 0.22, blockLength: 7.5, blockWidth: 8.5, blockHeight: 1, finish: 'anodized', pourSeconds: 4, owned: 2 },
  { mold: 'Two-half stick 5.5 in', kind: 'two-piece', cavities: 4, pieceWeight: 0.552, profile: 'ellipse', cavityLength: 5.5, cavityWidth: 0.5, cavityDepth: 0.5, blockLength: 7, blockWidth: 4.5, blockHeight: 1.5, finish: 'bare', pourSeconds: 6, owned: 2, notes: 'Volume not measured yet; weighed 10 pieces.' },
];
