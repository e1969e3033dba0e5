import { listText } from '../../words/quantityText.ts';

/** Beside a defect whose causes are to be looked for elsewhere. */
export const NOT_BY_HEAT = 'the heat record does not explain this';

/** Why too little is known to say that heat is not the cause; a phrase. */
export function unreadText({
  blanks,
  isTwoPiece,
}: {
  readonly blanks: readonly string[];
  readonly isTwoPiece: boolean;
}): string {
  const parts = [
    ...(blanks.length === 0
      ? []
      : [`${listText(blanks)} ${blanks.length === 1 ? 'is' : 'are'} blank`]),
    ...(isTwoPiece ? ['how warm layers met in a two-piece mold is not known well enough'] : []),
  ];
  return `too little is known to say: ${parts.join('; ')}`;
}
