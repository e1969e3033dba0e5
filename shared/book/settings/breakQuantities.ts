import { InputError } from '../../errors/InputError.ts';

const MOST_BREAKS = 12;

/**
 * The quantities of a price table from text such as `25, 50, 100`; commas, semicolons and blanks part them.
 * @returns from the fewest up, each once; none for a blank text
 * @throws InputError `break quantities must be whole numbers of pieces such as 25, 50, 100, got "25, x"`
 */
export function breakQuantities(text: string): readonly number[] {
  const parts = text.split(/[\s,;]+/).filter((part) => part !== '');
  const quantities = [...new Set(parts.map(Number))].sort((one, other) => one - other);
  const isGood = parts.every((part) => /^\d{1,6}$/.test(part) && Number(part) >= 1);
  if (!isGood || quantities.some((quantity) => quantity > 100_000))
    throw refusal(text, 'whole numbers of pieces such as 25, 50, 100');
  if (quantities.length > MOST_BREAKS) throw refusal(text, `no more than ${MOST_BREAKS} numbers`);
  return quantities;
}

function refusal(value: string, wanted: string): InputError {
  return new InputError({ field: 'break quantities', rule: { kind: 'form', wanted }, value });
}
