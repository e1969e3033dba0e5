import type { FigurePayload, WayBackPayload } from '../../shared/commands/commands.ts';
import { describe } from '../../shared/errors/describe.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { FIGURE_PARTS } from '../../shared/trials/figureCells.ts';
import type { FigureKey } from '../../shared/trials/proposal.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';

/** A figure that a page names, its plate or material, and who asks. */
export interface FigureAsked {
  readonly kind: 'asked';
  readonly figure: FigureKey;
  readonly of: string;
  readonly who: string;
  /** Of the journal; `""` when none was named */
  readonly entry: string;
}

const FIELDS = {
  figure: NEEDED_TEXT,
  of: { longest: 500, needed: false },
  who: { longest: 20, needed: false },
} as const;

/** A figure to put in use. */
export function readFigurePayload(payload: unknown): FigureAsked | Refused {
  const read = readPayload<FigurePayload>(FIELDS, payload);
  return read.kind === 'refused' ? read : figureAsked({ ...read.value, entry: '' });
}

/** A figure to take back, by its entry in the journal. */
export function readWayBackPayload(payload: unknown): FigureAsked | Refused {
  const read = readPayload<WayBackPayload>({ ...FIELDS, entry: NEEDED_TEXT }, payload);
  return read.kind === 'refused' ? read : figureAsked(read.value);
}

function figureAsked({ figure, of, who, entry }: WayBackPayload): FigureAsked | Refused {
  const keys = Object.keys(FIGURE_PARTS);
  if (!keys.includes(figure)) {
    const rule = { kind: 'one of', choices: keys } as const;
    return refuse('figure', describe({ field: 'figure', rule, value: figure }));
  }
  return { kind: 'asked', figure, of: of ?? '', who: (who ?? '').trim(), entry };
}
