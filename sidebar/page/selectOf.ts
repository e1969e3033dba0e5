import { el } from './el.ts';

export type Options = readonly (readonly [value: string, text: string])[];

/** A list to choose from; a value that is no choice (any more) stays on it, so that it is seen and not lost. */
export function selectOf(
  attributes: Readonly<Record<string, string | undefined>>,
  value: string,
  options: Options,
): HTMLSelectElement {
  const isListed = options.some(([one]) => one === value);
  const all = isListed ? options : [[value, value] as const, ...options];
  const made = el(
    'select',
    attributes,
    ...all.map(([one, text]) => el('option', { value: one }, text)),
  );
  made.value = value;
  return made;
}
