import { POUR_LOG, TEAR_KEYS } from '../../shared/book/tables/pourLog.ts';
import type { LogForm } from '../../shared/commands/logCommands.ts';
import {
  type FormKey,
  formUnit,
  GAP_KEYS,
  LONGEST,
  NEEDED,
  POUR_KEYS,
} from '../../shared/log/formColumn.ts';
import { UNITS } from '../../shared/units/units.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import type { Store } from '../panel/store.ts';
import type { LogView } from '../panel/view.ts';
import { typeInto } from './openLog.ts';

/** A field of the form with its label, its unit and what is wrong with it. */
export function logField(key: FormKey, view: LogView, store: Store): HTMLElement {
  const { kind, about } = POUR_LOG.columns[key];
  const input =
    key === 'notes'
      ? el('textarea', inputLooks(key, view))
      : el('input', { type: 'text', ...inputLooks(key, view) });
  if (kind === 'number') input.setAttribute('inputmode', 'decimal');
  input.title = about;
  input.value = view.draft.values[key] ?? '';
  input.addEventListener('input', () => typeInto(store, key, input.value));
  return labeled(labelOf(key, view.form), input, ...errorOf(key, view));
}

/** What every control of the form carries: its id, whether it is needed, and a pointer to its message. */
export function inputLooks(
  key: FormKey,
  { problems }: LogView,
): Readonly<Record<string, string | undefined>> {
  const isBroken = problems.some(({ field }) => field === key);
  const longest = key in LONGEST ? LONGEST[key as keyof typeof LONGEST] : undefined; // checked before
  return {
    id: key,
    name: key,
    autocomplete: 'off',
    maxlength: longest === undefined ? undefined : String(longest),
    'aria-required': NEEDED.includes(key) ? 'true' : undefined,
    'aria-invalid': isBroken ? 'true' : undefined,
    'aria-describedby': isBroken ? `${key}-error` : undefined,
  };
}

export function errorOf(key: FormKey, { problems }: LogView): readonly HTMLElement[] {
  const texts = problems.filter(({ field }) => field === key);
  if (texts.length === 0) return [];
  return [
    el(
      'p',
      { id: `${key}-error`, class: 'error' },
      texts.map(({ text }) => sentence(text)).join(' '),
    ),
  ];
}

/** The column's own heading, with the layer's name for a reading of a layer, and the unit to type. */
export function labelOf(key: FormKey, { layers, system }: LogForm): string {
  const { heading } = POUR_LOG.columns[key];
  const pour = keysOf(POUR_KEYS).indexOf(key);
  const gap = Math.max(keysOf(GAP_KEYS).indexOf(key), keysOf(TEAR_KEYS).indexOf(key));
  const words =
    pour >= 0
      ? `${heading}, ${layers[pour] ?? ''}`
      : gap >= 0
        ? `${heading}, ${layers[gap] ?? ''} to ${layers[gap + 1] ?? ''}`
        : heading;
  const unit = formUnit(key, system);
  const label = unit ? UNITS[unit].label : '';
  const needed = NEEDED.includes(key) ? ' (needed)' : '';
  return `${words}${label ? ` (${label})` : ''}${needed}`;
}

/** As keys of the form, so that any of them may be looked for. */
function keysOf(keys: readonly FormKey[]): readonly FormKey[] {
  return keys;
}
