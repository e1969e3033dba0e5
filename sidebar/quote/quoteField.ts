import { ORDERS } from '../../shared/book/tables/orders.ts';
import { LONGEST_FIELD, type QuoteKey } from '../../shared/money/quote/quoteFieldTypes.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import { type Options, selectOf } from '../page/selectOf.ts';
import type { QuoteView } from '../panel/view.ts';

/** What a field of the quote looks like. */
export interface QuoteField {
  readonly key: QuoteKey;
  readonly label: string;
  /** Choices with their words; a text field where it is left out. */
  readonly options?: Options;
  readonly type?: 'text' | 'date' | 'decimal';
  readonly isNeeded?: boolean;
}

/** What follows from a field: `typed` at each key, `done` when it is left or chosen. */
export interface Following {
  readonly typed: (key: QuoteKey, text: string) => void;
  readonly done: (key: QuoteKey) => void;
}

/** A field with its label and what is wrong with it. */
export function quoteField(
  field: QuoteField,
  { values, problems }: QuoteView,
  following: Following,
): HTMLElement {
  const { key, label, isNeeded = false } = field;
  const text = values[key] ?? '';
  const control = field.options
    ? selectOf({ id: key, name: key, title: aboutOf(key) }, text, field.options)
    : inputOf(field, text);
  control.addEventListener('input', () => following.typed(key, control.value));
  control.addEventListener('change', () => following.done(key));
  if (isNeeded) control.setAttribute('aria-required', 'true');
  const error = el('p', { id: `${key}-error`, class: 'error', hidden: '' });
  const made = labeled(isNeeded ? `${label} (needed)` : label, control, error);
  const broken = problems.filter((one) => one.field === key);
  showProblem(made, key, broken.map(({ text: words }) => sentence(words)).join(' '));
  return made;
}

/** Says what is wrong at a field that is in the page, or takes it away. */
export function mark(key: QuoteKey, text: string): void {
  const made = document.getElementById(key)?.closest<HTMLElement>('.field');
  if (made) showProblem(made, key, text);
}

function showProblem(field: HTMLElement, key: QuoteKey, text: string): void {
  const control = field.querySelector('input, select');
  const error = field.querySelector<HTMLElement>('.error');
  if (control === null || error === null) return;
  error.textContent = text;
  error.hidden = text === '';
  if (text === '') {
    control.removeAttribute('aria-invalid');
    control.removeAttribute('aria-describedby');
  } else {
    control.setAttribute('aria-invalid', 'true');
    control.setAttribute('aria-describedby', `${key}-error`);
  }
}

function inputOf({ key, type = 'text' }: QuoteField, text: string): HTMLInputElement {
  const input = el('input', {
    id: key,
    name: key,
    type: type === 'date' ? 'date' : 'text',
    autocomplete: 'off',
    maxlength: String(LONGEST_FIELD),
    inputmode: type === 'decimal' ? 'decimal' : undefined,
    title: aboutOf(key),
  });
  input.value = text;
  return input;
}

function aboutOf(key: QuoteKey): string | undefined {
  return key === 'by' || key === 'aim' ? undefined : ORDERS.columns[key].about;
}
