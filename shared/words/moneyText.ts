import { CURRENCIES, type CurrencyCode } from '../book/currencies.ts';

/**
 * An amount in words of its currency: `$1,234.50`, `-$3.00`, `1 234,50 kr`. A document names the code once, see {@link CURRENCIES}.
 * @param minor a whole number of smallest units
 */
export function moneyText(minor: number, currency: CurrencyCode): string {
  const { digits, pattern, point, group } = CURRENCIES[currency];
  const figures = String(Math.abs(minor)).padStart(digits + 1, '0');
  const whole = figures.slice(0, figures.length - digits);
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, group);
  const fraction = digits > 0 ? point + figures.slice(-digits) : '';
  return (minor < 0 ? '-' : '') + pattern.replace('#', grouped + fraction);
}
