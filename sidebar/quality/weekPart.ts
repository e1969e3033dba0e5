import type { QualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import {
  NO_WORST,
  trendText,
  weekTexts,
  worstTexts,
} from '../../shared/outcomes/quality/weekTexts.ts';
import { percentText } from '../../shared/words/percentText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';

/** Parts that the panel and the printed page share; a signal is listed with the newest first. */
export function weekPart(quality: QualitySummary): readonly HTMLElement[] {
  const { key, text } = weekTexts(quality);
  return [el('p', { class: 'key' }, key), el('p', {}, text)];
}

export function signalsPart({ pictures }: QualitySummary): readonly HTMLElement[] {
  const charts = pictures.flatMap((picture) =>
    picture.kind === 'share-chart' || picture.kind === 'weight-chart' ? [picture] : [],
  );
  if (charts.length === 0)
    return [el('p', {}, 'No chart yet: it needs two rounds or two weighed pieces.')];
  const items = charts.flatMap(({ kind, signals }) =>
    [...signals]
      .sort((one, other) => other.to - one.to)
      .map(({ text }) =>
        el(
          'li',
          {},
          el('strong', {}, kind === 'share-chart' ? 'Bad pieces: ' : 'Weight: '),
          sentence(text),
        ),
      ),
  );
  if (items.length === 0)
    return [el('p', {}, 'None: what came out varies no more than luck lets it.')];
  return [
    el('ul', {}, ...items),
    el('p', { class: 'small' }, 'A signal says when to look for a cause, not which one it is.'),
  ];
}

export function worstPart({ worst }: QualitySummary): readonly HTMLElement[] {
  if (worst.length === 0) return [el('p', {}, NO_WORST)];
  const items = worst.map((group) => {
    const { name, evidence } = worstTexts(group);
    return el('li', {}, el('strong', {}, `${name}: `), sentence(evidence));
  });
  return [
    el('ol', {}, ...items),
    el(
      'p',
      { class: 'small' },
      'Of the last 8 weeks, all molds and patterns; worse than the others for sure, 95 % intervals.',
    ),
  ];
}

export function weeksPart(quality: QualitySummary): readonly HTMLElement[] {
  const head = ['Week of', 'Poured', 'Good', 'Share'].map((text) =>
    el('th', { scope: 'col' }, text),
  );
  const rows = [...quality.weeks]
    .reverse()
    .map(({ from, poured, good }) =>
      el(
        'tr',
        {},
        el('th', { scope: 'row' }, from),
        el('td', {}, String(poured)),
        el('td', {}, String(good)),
        el('td', {}, poured === 0 ? '–' : percentText(good / poured)),
      ),
    );
  return [
    el('p', {}, trendText(quality)),
    el(
      'table',
      { class: 'money figures' },
      el('thead', {}, el('tr', {}, ...head)),
      el('tbody', {}, ...rows),
    ),
  ];
}
