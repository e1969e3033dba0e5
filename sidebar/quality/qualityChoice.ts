import type { QualityPayload } from '../../shared/commands/qualityCommands.ts';
import type { QualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import { choiceField } from '../page/choiceField.ts';
import { el } from '../page/el.ts';
import type { Options } from '../page/selectOf.ts';
import type { Store } from '../panel/store.ts';
import { isBusy } from '../panel/workButton.ts';
import { openQuality } from './openQuality.ts';

/** Which rounds to look at, and what a point of the chart is. */
export function qualityChoice(
  { molds, patterns, asked }: QualitySummary,
  store: Store,
): HTMLElement {
  const { mold = '', pattern = '', points } = asked;
  const choiceOf = (
    key: keyof QualityPayload,
    label: string,
    value: string,
    options: Options,
  ): HTMLElement =>
    choiceField({ id: `look-${key}`, label, value, isOff: isBusy(store) }, options, (chosen) => {
      void openQuality(store, { [key]: chosen });
    });
  return el(
    'section',
    { 'aria-label': 'What to look at' },
    choiceOf('mold', 'Mold', mold, named('All molds', molds)),
    choiceOf('pattern', 'Pattern', pattern, named('All patterns', patterns)),
    choiceOf('points', 'A point of the chart is', points, [
      ['rounds', 'a round'],
      ['runs', 'a run, all its rounds'],
    ]),
  );
}

function named(all: string, names: readonly string[]): Options {
  return [['', all], ...names.map((name) => [name, name] as const)];
}
