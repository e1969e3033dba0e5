import { describe } from '../../errors/describe.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import { FIGURE_PARTS } from '../../trials/figureCell.ts';
import type { FigureKey } from '../../trials/proposal.ts';
import type { FigurePayload } from '../commandTypes.ts';
import { NEEDED_TEXT } from '../readPayload.ts';

/** What names a figure in a page's request. */
export const FIGURE_FIELDS = {
  figure: NEEDED_TEXT,
  of: { longest: 500, needed: false },
  who: { longest: 20, needed: false },
} as const;

/** A figure that a page names, its plate or material, and who asks. */
export interface FigureAsked {
  readonly figure: FigureKey;
  readonly of: string;
  readonly who: string;
}

export function figureAsked({ figure, of, who }: FigurePayload): FigureAsked | Refused {
  const keys = Object.keys(FIGURE_PARTS);
  if (!keys.includes(figure)) {
    const rule = { kind: 'one of', choices: keys } as const;
    return refuse('figure', describe({ field: 'figure', rule, value: figure }));
  }
  return { figure, of: of ?? '', who: (who ?? '').trim() };
}
