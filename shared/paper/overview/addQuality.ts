import type { QualitySummary } from '../../outcomes/quality/qualitySummary.ts';
import { NO_WORST, trendText, weekTexts, worstTexts } from '../../outcomes/quality/weekTexts.ts';
import { addControlChart, addDefects, addWeights, addYieldCurve } from './addControlChart.ts';
import { addHeading, addOverviewTable, addWide, type OverviewDraft } from './addOverviewTable.ts';

/** Signals named, the newest: a sheet is read at a glance. */
const SIGNALS = 5;

/** This week's yield, the weeks before, signals, the worst, and the charts that the panel draws, as the sheet's own. */
export function addQuality(draft: OverviewDraft, quality: QualitySummary): void {
  const { key, text } = weekTexts(quality);
  addHeading(draft, `Quality this week: ${key}`);
  addWide(draft, text, 'text');
  if (quality.rounds === 0) return;
  addWeeks(draft, quality);
  addSignals(draft, quality);
  addWorst(draft, quality);
  addControlChart(draft, quality);
  addDefects(draft, quality);
  addYieldCurve(draft, quality);
  addWeights(draft, quality);
}

function addWeeks(draft: OverviewDraft, quality: QualitySummary): void {
  addWide(draft, trendText(quality), 'text');
  addOverviewTable(
    draft,
    [
      { heading: 'Week of', style: 'text' },
      { heading: 'Rounds', style: 'count' },
      { heading: 'Poured', style: 'count' },
      { heading: 'Good', style: 'count' },
      { heading: 'Good share', style: 'share' },
      { heading: 'At least', style: 'share' },
      { heading: 'At most', style: 'share' },
    ],
    quality.weeks.map(({ from, rounds, poured, good, interval }) => [
      ...[from, rounds, poured, good, poured === 0 ? undefined : good / poured],
      interval?.low,
      interval?.high,
    ]),
  );
}

function addSignals(draft: OverviewDraft, { pictures }: QualitySummary): void {
  const texts = pictures.flatMap((picture) =>
    picture.kind === 'share-chart' || picture.kind === 'weight-chart'
      ? [...picture.signals].sort((one, other) => other.to - one.to).map(({ text }) => text)
      : [],
  );
  addHeading(draft, texts.length === 0 ? 'Signals: none' : 'Signals, the newest first');
  for (const text of texts.slice(0, SIGNALS)) addWide(draft, `${text}.`, 'text');
  const more = texts.length - SIGNALS;
  if (more > 0) addWide(draft, `And ${more} more: see Quality in the panel.`, 'note');
}

function addWorst(draft: OverviewDraft, { worst }: QualitySummary): void {
  addHeading(draft, 'Worst three of the last 8 weeks');
  if (worst.length === 0) addWide(draft, NO_WORST, 'text');
  for (const group of worst) {
    const { name, evidence } = worstTexts(group);
    addWide(draft, `${name}: ${evidence}.`, 'text');
  }
}
