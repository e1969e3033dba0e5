import { labeled } from './labeled.ts';
import { type Options, selectOf } from './selectOf.ts';

/** A labeled list that acts as soon as something is chosen. */
export function choiceField(
  { id, label, value, isOff = false }: Choice,
  options: Options,
  choose: (value: string) => void,
): HTMLElement {
  const select = selectOf({ id }, value, options);
  select.disabled = isOff;
  select.addEventListener('change', () => choose(select.value));
  return labeled(label, select);
}

interface Choice {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly isOff?: boolean;
}
