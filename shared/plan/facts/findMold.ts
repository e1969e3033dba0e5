import type { CavityProfile } from '../../batch/fillShare.ts';
import type { MoldRow } from '../../book/bookIndex.ts';
import { addMissing, type MissingCells, need, optional } from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';

/** A mold with everything a plan needs; m, m3, kg, s. */
export interface MoldFacts {
  readonly name: string;
  readonly row: number;
  readonly kind: 'open' | 'two-piece';
  readonly cavities: number;
  /** Either the volume of a cavity [m3] or the weight of a finished piece [kg]. */
  readonly content:
    | { readonly kind: 'volume'; readonly volume: number }
    | { readonly kind: 'weight'; readonly weight: number };
  readonly profile: CavityProfile;
  readonly cavityWidth: number;
  readonly cavityDepth: number;
  readonly cavityLength: number | undefined;
  readonly blockLength: number;
  readonly blockWidth: number;
  readonly blockHeight: number;
  readonly finish: 'bare' | 'anodized';
  readonly pourSeconds: number;
  readonly owned: number;
}

/** The facts of a mold, or undefined with every gap noted. */
export function findMold(gaps: MissingCells, row: MoldRow): MoldFacts | undefined {
  const table = TABLES.molds;
  const kind = need(gaps, table, row, 'kind');
  const cavities = need(gaps, table, row, 'cavities');
  const content = contentOf(gaps, row);
  const profile = need(gaps, table, row, 'profile');
  const cavityWidth = need(gaps, table, row, 'cavityWidth');
  const cavityDepth = need(gaps, table, row, 'cavityDepth');
  const blockLength = need(gaps, table, row, 'blockLength');
  const blockWidth = need(gaps, table, row, 'blockWidth');
  const blockHeight = need(gaps, table, row, 'blockHeight');
  const pourSeconds = need(gaps, table, row, 'pourSeconds');
  if (
    kind === undefined ||
    cavities === undefined ||
    content === undefined ||
    profile === undefined ||
    cavityWidth === undefined ||
    cavityDepth === undefined ||
    blockLength === undefined ||
    blockWidth === undefined ||
    blockHeight === undefined ||
    pourSeconds === undefined
  )
    return undefined;
  const block = { blockLength, blockWidth, blockHeight };
  const cavity = { content, profile, cavityWidth, cavityDepth };
  return {
    name: row.record.mold ?? '',
    row: row.row,
    kind,
    cavities,
    ...cavity,
    cavityLength: optional(gaps, table, row, 'cavityLength'),
    ...block,
    finish: optional(gaps, table, row, 'finish') ?? 'bare',
    pourSeconds,
    owned: optional(gaps, table, row, 'owned') ?? 1,
  };
}

function contentOf(gaps: MissingCells, row: MoldRow): MoldFacts['content'] | undefined {
  const volume = optional(gaps, TABLES.molds, row, 'cavityVolume');
  if (volume !== undefined) return { kind: 'volume', volume };
  const weight = optional(gaps, TABLES.molds, row, 'pieceWeight');
  if (weight !== undefined) return { kind: 'weight', weight };
  addMissing(gaps, {
    sheet: 'Molds',
    row: row.row,
    heading: 'Cavity volume',
    text: 'cavity volume or piece weight must be given, got nothing',
  });
  return undefined;
}
