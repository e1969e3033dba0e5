import { InputError } from './InputError.ts';

/**
 * The value as one of the choices.
 * @throws InputError `mold kind must be one of open, two-piece, got "round"`
 */
export function requireChoice<Choice extends string>(
  value: unknown,
  field: string,
  choices: readonly Choice[],
): Choice {
  const found = choices.find((choice) => choice === value);
  if (found === undefined)
    throw new InputError({ field, rule: { kind: 'one of', choices }, value });
  return found;
}
