import { fillMark } from '../../batch/fillMark.ts';
import { type CavityProfile, sharesFromMarks } from '../../batch/fillShare.ts';
import { addMissing, type MissingCells } from '../../book/missingCells.ts';
import { shareText } from '../../words/quantityText.ts';
import type { MoldFacts } from './findMold.ts';
import type { LayerFacts, PatternFacts } from './findPattern.ts';

/** How full a layer leaves the cavity. */
export interface LayerFill {
  /** Of the cavity's volume; the layers' shares add up to exactly 1. */
  readonly share: number;
  /** Height of the surface as a share of the cavity's depth, upright height in a two-piece mold. */
  readonly mark: number;
}

/** Shares and last marks may miss 100 % by this much, as figures rounded for typing do. */
const SLACK = 0.005;

/**
 * Shares and fill marks of a pattern in a mold: from its shares where every layer has one, else from its fill marks.
 * An open cavity is measured by its profile; a two-piece mold filled upright is taken as equally thick along its length.
 * @returns one per layer, or undefined with every gap noted
 */
export function layerShares(
  gaps: MissingCells,
  mold: MoldFacts,
  { name, layers }: PatternFacts,
): readonly LayerFill[] | undefined {
  const profile = mold.kind === 'two-piece' ? 'box' : mold.profile;
  const shares = layers.map((layer) => layer.share).filter((share) => share !== undefined);
  if (shares.length === layers.length) return fromShares(gaps, profile, name, layers, shares);
  const marks = layers.map((layer) => layer.fillMark).filter((mark) => mark !== undefined);
  if (marks.length === layers.length) return fromMarks(gaps, profile, name, layers, marks);
  const lacking = layers.find((layer) =>
    shares.length > 0 ? layer.share === undefined : layer.fillMark === undefined,
  );
  addMissing(gaps, {
    sheet: 'Patterns',
    row: lacking?.row ?? layers[0]?.row ?? 1,
    heading: 'Share',
    text: `every layer of ${name} must have a share, or every layer a fill mark, got neither for ${lacking?.layer}`,
  });
  return undefined;
}

function fromShares(
  gaps: MissingCells,
  profile: CavityProfile,
  pattern: string,
  layers: readonly LayerFacts[],
  shares: readonly number[],
): readonly LayerFill[] | undefined {
  const sum = shares.reduce((total, share) => total + share, 0);
  if (Math.abs(sum - 1) > SLACK) {
    addMissing(gaps, {
      sheet: 'Patterns',
      row: layers[0]?.row ?? 1,
      heading: 'Share',
      text: `the shares of ${pattern} must add up to 100 %, got ${shareText(sum)}`,
    });
    return undefined;
  }
  let below = 0;
  return shares.map((share, index) => {
    below += share / sum;
    const isLast = index === shares.length - 1;
    return { share: share / sum, mark: isLast ? 1 : fillMark(profile, Math.min(1, below)) };
  });
}

function fromMarks(
  gaps: MissingCells,
  profile: CavityProfile,
  pattern: string,
  layers: readonly LayerFacts[],
  marks: readonly number[],
): readonly LayerFill[] | undefined {
  const before = gaps.missing.length;
  layers.forEach((layer, index) => {
    const mark = marks[index] ?? 0;
    const below = marks[index - 1] ?? 0;
    if (mark <= below)
      addMissing(gaps, {
        ...placeOf(layer),
        text: `fill mark must be greater than the mark of the layer below (${shareText(below)}), got ${shareText(mark)}`,
      });
  });
  const last = marks[marks.length - 1] ?? 0;
  const lastLayer = layers[layers.length - 1];
  if (lastLayer && Math.abs(last - 1) > SLACK)
    addMissing(gaps, {
      ...placeOf(lastLayer),
      text: `last fill mark of ${pattern} must be 100 %, got ${shareText(last)}`,
    });
  if (gaps.missing.length > before) return undefined;
  const whole = [...marks.slice(0, -1), 1];
  const shares = sharesFromMarks(profile, whole);
  return whole.map((mark, index) => ({ mark, share: shares[index] ?? 0 }));
}

function placeOf(layer: LayerFacts) {
  return { sheet: 'Patterns', row: layer.row, heading: 'Fill mark' } as const;
}
