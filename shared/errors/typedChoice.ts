import { InputError } from './InputError.ts';

/**
 * A choice as a person types it, whatever its case and the blanks around it.
 * @throws InputError `mold kind must be one of open, two-piece, got "round"`
 */
export function typedChoice(value: unknown, field: string, choices: readonly string[]): string {
  const text = String(value).trim().toLowerCase();
  const found = choices.find((choice) => choice.toLowerCase() === text);
  if (found === undefined)
    throw new InputError({ field, rule: { kind: 'one of', choices }, value });
  return found;
}
