import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import type { QualitySummary } from '../../outcomes/quality/qualitySummary.ts';
import type { Picture } from '../../pictures/pictureTypes.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { temperatureText } from '../../words/quantityText.ts';
import {
  addChart,
  addHeading,
  addOverviewTable,
  addWide,
  type OverviewDraft,
  type OverviewValue,
} from './addOverviewTable.ts';

/** Points of a control chart, the newest; points of the curve, which has more. */
const POINTS = 24;
const CURVE_STEP = 5;

/** Share of bad pieces of the last rounds as a line chart, with its limits. */
export function addControlChart(draft: OverviewDraft, { pictures }: QualitySummary): void {
  const chart = pictureOf(pictures, 'share-chart');
  addHeading(draft, 'Share of bad pieces, round by round');
  if (chart === undefined) {
    addWide(draft, 'The control chart needs two rounds.', 'text');
    return;
  }
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Round', style: 'text' },
      { heading: 'Share bad', style: 'share' },
      { heading: 'Center', style: 'share' },
      { heading: 'Lower limit', style: 'share' },
      { heading: 'Upper limit', style: 'share' },
      { heading: 'Signal', style: 'text' },
    ],
    lastPoints(chart, 1),
  );
  addChart(draft, 'Share of bad pieces', columns.slice(0, 5), 'lines');
}

/** Weights of the last pieces of the mold that was weighed last. */
export function addWeights(draft: OverviewDraft, { pictures, system }: QualitySummary): void {
  const chart = pictureOf(pictures, 'weight-chart');
  if (chart === undefined) return;
  const unit = MEASURES.baseMass[system];
  addHeading(draft, `${chart.title}, ${UNITS[unit].label}`);
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Round', style: 'text' },
      { heading: 'Weight', style: 'number' },
      { heading: 'Center', style: 'number' },
      { heading: 'Lower limit', style: 'number' },
      { heading: 'Upper limit', style: 'number' },
      { heading: 'Signal', style: 'text' },
    ],
    lastPoints(chart, fromEngine(1, unit)),
  );
  addChart(draft, chart.title, columns.slice(0, 5), 'lines');
}

/** Points with center, limits and the rules that they break, the newest last. */
function lastPoints(
  { points, center, signals }: ControlChart,
  scale: number,
): readonly (readonly OverviewValue[])[] {
  const first = Math.max(0, points.length - POINTS);
  return points.slice(first).map(({ label, value, lower, upper }, index) => {
    const rules = signals.filter(({ to }) => to === first + index).map(({ rule }) => rule);
    const figures = [value, center, lower, upper].map((figure) => figure * scale);
    return [label, ...figures, rules.join('; ')];
  });
}

/** Bad pieces by what was wrong as a column chart. */
export function addDefects(draft: OverviewDraft, { pictures }: QualitySummary): void {
  const ranking = pictureOf(pictures, 'defect-pareto');
  if (ranking === undefined) return;
  addHeading(draft, 'What was wrong');
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Defect', style: 'text' },
      { heading: 'Pieces', style: 'count' },
      { heading: 'Share', style: 'share' },
      { heading: 'Summed', style: 'share' },
    ],
    ranking.bars.map(({ name, count, share, cumulated }) => [name, count, share, cumulated]),
  );
  addChart(draft, 'Bad pieces by what was wrong', columns.slice(0, 2));
}

/** The fitted curve of the yield over the mold top with its band, from the coolest to the hottest reading. */
export function addYieldCurve(draft: OverviewDraft, { pictures, system }: QualitySummary): void {
  const shown = pictureOf(pictures, 'yield-curve');
  if (shown === undefined) return;
  addHeading(draft, 'Yield against mold top, fitted, with its 95 % band');
  addWide(draft, shown.says.join(' '), 'text');
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Mold top', style: 'text' },
      { heading: 'Good share', style: 'share' },
      { heading: 'At least', style: 'share' },
      { heading: 'At most', style: 'share' },
    ],
    shown.curve
      .filter((_, index) => index % CURVE_STEP === 0)
      .map(({ moldTop, rate, low, high }) => [
        temperatureText(moldTop, system),
        ...[rate, low, high],
      ]),
  );
  addChart(draft, 'Yield against mold top', columns, 'lines');
}

function pictureOf<Kind extends Picture['kind']>(
  pictures: readonly Picture[],
  kind: Kind,
): OfKind<Kind> | undefined {
  return pictures.find((picture): picture is OfKind<Kind> & Picture => picture.kind === kind);
}

/** A picture type may stand for two kinds. */
type OfKind<Kind extends Picture['kind']> = Picture extends infer One
  ? One extends { readonly kind: infer Own }
    ? Kind extends Own
      ? One
      : never
    : never
  : never;
