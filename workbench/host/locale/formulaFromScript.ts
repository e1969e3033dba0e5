/** Texts in quotes, and array literals, whose separators mean rows and columns. */
const KEPT = /("(?:[^"]|"")*"|'(?:[^']|'')*'|\{[^{}]*\})/;

/** What a cell shows whose formula the platform cannot read. */
const UNREADABLE = '=ERROR.PARSE';

/** Whether numbers of a locale, such as `de_DE`, have a decimal comma. */
export function hasDecimalComma(locale: string): boolean {
  const parts = new Intl.NumberFormat(locale.replace('_', '-')).formatToParts(1.5);
  return parts.some(({ type, value }) => type === 'decimal' && value === ',');
}

/**
 * A formula as a script writes it, for the engine, which separates arguments by commas. The platform translates nothing: `;` separates
 * arguments in every locale, a comma only where it is no decimal sign, and `1.8` is no number where it is.
 */
export function formulaFromScript(formula: string, locale: string): string {
  const isUnreadable = (part: string) => part.includes(',') || /\d\.\d/.test(part);
  const parts = formula.split(KEPT);
  const outside = parts.filter((_, index) => index % 2 === 0);
  if (hasDecimalComma(locale) && outside.some(isUnreadable)) return UNREADABLE;
  return parts.map((part, index) => (index % 2 === 1 ? part : part.replace(/;/g, ','))).join('');
}

/** A formula of the engine as the platform tells it in a locale. */
export function formulaForScript(formula: string, locale: string): string {
  if (!hasDecimalComma(locale)) return formula;
  return formula
    .split(KEPT)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(/,/g, ';')))
    .join('');
}

/** A text as typed in a locale, as the engine's own locale would have it: `1.234,5` becomes `1234.5`. */
export function typedInLocale(text: string, locale: string): string {
  const isNumber =
    /^\s*[+-]?\d{1,3}(?:\.\d{3})*(?:,\d+)?\s*%?\s*$|^\s*[+-]?\d+(?:,\d+)?\s*%?\s*$/.test(text);
  return hasDecimalComma(locale) && isNumber ? text.replace(/\./g, '').replace(',', '.') : text;
}
