import { FONT } from '../../elements/shape.ts';

/** Share of the font size that a letter takes: common Latin text on average, wide scripts whole. Rather too much than too little. */
const LATIN = 0.56;
const WIDE = 1;
const FIRST_WIDE = 0x1100;

/** Width of a text [px], estimated without a page. */
export function textWidth(text: string, size: number): number {
  return [...text].reduce((sum, letter) => sum + widthOf(letter) * size, 0);
}

/** The text, cut with an ellipsis where it is wider than the room. */
export function fitText(text: string, room: number, size: number): string {
  if (textWidth(text, size) <= room) return text;
  let kept = '';
  for (const letter of text) {
    if (textWidth(`${kept}${letter}…`, size) > room) break;
    kept += letter;
  }
  return `${kept.trimEnd()}…`;
}

function widthOf(letter: string): number {
  return (letter.codePointAt(0) ?? 0) >= FIRST_WIDE && letter !== '…' && letter !== '–'
    ? WIDE
    : LATIN;
}

/** Room that the widest of the texts takes [px]. */
export function textsWidth(texts: readonly string[]): number {
  return Math.max(0, ...texts.map((text) => textWidth(text, FONT.plain)));
}
