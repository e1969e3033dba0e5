import type { QualityPayload } from '../../shared/commands/qualityCommands.ts';
import type { QualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import { el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import { openQuality } from './openQuality.ts';

interface Option {
  readonly value: string;
  readonly text: string;
}

/** Which rounds to look at, and what a point of the chart is. */
export function qualityChoice(
  { molds, patterns, asked }: QualitySummary,
  store: Store,
): HTMLElement {
  const { mold = '', pattern = '', points } = asked;
  return el(
    'section',
    { 'aria-label': 'What to look at' },
    choiceOf('mold', 'Mold', named('All molds', molds), mold, store),
    choiceOf('pattern', 'Pattern', named('All patterns', patterns), pattern, store),
    choiceOf(
      'points',
      'A point of the chart is',
      [
        { value: 'rounds', text: 'a round' },
        { value: 'runs', text: 'a run, all its rounds' },
      ],
      points,
      store,
    ),
  );
}

function named(all: string, names: readonly string[]): readonly Option[] {
  return [{ value: '', text: all }, ...names.map((name) => ({ value: name, text: name }))];
}

function choiceOf(
  key: keyof QualityPayload,
  label: string,
  options: readonly Option[],
  chosen: string,
  store: Store,
): HTMLElement {
  const id = `look ${key}`.replace(' ', '-');
  const select = el(
    'select',
    { id },
    ...options.map(({ value, text }) => el('option', { value }, text)),
  );
  select.value = chosen;
  select.disabled = store.get().busy !== '';
  select.addEventListener('change', () => void openQuality(store, { [key]: select.value }));
  return el('div', { class: 'field' }, el('label', { for: id }, label), select);
}
