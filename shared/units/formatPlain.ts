/**
 * A number as a person writes it: at most six significant digits, no trailing zeros, no exponent for everyday sizes.
 * @param value any finite number; others are named in words, so that no sentence ever holds NaN
 */
export function formatPlain(value: number): string {
  if (Number.isNaN(value)) return 'not a number';
  if (!Number.isFinite(value)) return value > 0 ? 'infinity' : 'minus infinity';
  return String(Number(value.toPrecision(6)));
}

/**
 * A number rounded for display.
 * @param places digits after the point, 0 to 6; trailing zeros are kept so that columns line up
 */
export function formatFixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace('-', '') : text;
}
