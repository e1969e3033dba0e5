import type { SolvedLayer } from '../heat/solver/solvedLayer.ts';

/** A second early is no error of the person who pours, nor of the solver [s]. */
const SLACK = 1;

export const TOP = 'top layer: the times are for one more pour as hot';
export const NEVER_FIRM = 'never firm on so hot a mold';

/** What comes of the next pour as planned, or that nothing follows. */
export function windowText(layer: SolvedLayer, gap: number | undefined): string {
  const { earliest, joint, verdict } = layer;
  if (gap === undefined || joint === undefined) return TOP;
  if (verdict === 'closes before firm')
    return 'no good moment: it is too cool to bond before it is firm; pour the next hotter';
  if (joint.verdict === 'peels')
    return verdict === 'too late from the start'
      ? 'peels at any time: pour the next hotter'
      : 'too late: peels';
  if (earliest.kind === 'never firm') return `${NEVER_FIRM}: bonds, but colors mix`;
  if (earliest.kind === 'seconds' && gap < earliest.seconds - SLACK)
    return 'too early: not firm yet, colors mix';
  return 'bonds';
}
