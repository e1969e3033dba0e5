import { InputError } from '../errors/InputError.ts';
import type { CellValue } from './parseCell.ts';
import { parseQuantities } from './parseQuantities.ts';
import type { Setting } from './setting.ts';

/**
 * A text of the sheet *Shop*, in the form that its setting asks for.
 * @throws InputError when it does not read as that
 */
export function settingText(
  setting: Extract<Setting, { readonly kind: 'text' }>,
  value: CellValue,
): string {
  const text = String(value).trim();
  const field = setting.label.toLowerCase();
  if (setting.form === 'quantities') parseQuantities(text, field);
  if (setting.form !== 'currency') return text;
  const code = text.toUpperCase();
  if (/^[A-Z]{3}$/.test(code)) return code;
  const wanted = 'a three-letter currency code such as USD';
  throw new InputError({ field, rule: { kind: 'form', wanted }, value });
}
