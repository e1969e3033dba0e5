import type { Book } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { type ChartPoints, chartSamples } from './chartSamples.ts';
import type { ControlChart } from './controlChart.ts';
import { type DefectPareto, defectPareto } from './defectPareto.ts';
import { inScope, type LoggedRound, loggedRounds, namesOf, type Scope } from './loggedRounds.ts';
import { shareChart } from './shareChart.ts';
import { type Weeks, weekYields } from './weekYields.ts';
import { lastWeighed, weightChart } from './weightChart.ts';
import { type WorstGroup, worstGroups } from './worstGroups.ts';
import { type YieldAgainstTop, yieldPicture } from './yieldPicture.ts';

/** What is drawn of the log, as data. */
export type QualityPicture = ControlChart | DefectPareto | YieldAgainstTop;

export interface QualityAsked extends Scope {
  readonly points: ChartPoints;
}

/** Everything that the view, the printed page and the overview show of what came out. */
export interface QualitySummary {
  readonly shopName: string;
  readonly system: UnitSystem;
  /** `yyyy-mm-dd` */
  readonly day: string;
  readonly asked: QualityAsked;
  /** Molds and patterns that have rounds in the log. */
  readonly molds: readonly string[];
  readonly patterns: readonly string[];
  /** Rounds that were asked for. */
  readonly rounds: number;
  readonly weeks: Weeks['weeks'];
  readonly trend?: NonNullable<Weeks['trend']>['verdict'];
  /** Of all molds and patterns in these weeks, whatever was asked for. */
  readonly worst: readonly WorstGroup[];
  readonly pictures: readonly QualityPicture[];
  /** Why a picture is not there, one sentence each. */
  readonly missing: readonly string[];
}

export type QualityBook = Pick<Book, 'shop' | 'pourLog' | 'patterns'>;

/** @param day - `yyyy-mm-dd` */
export function qualitySummary(
  book: QualityBook,
  day: string,
  asked: QualityAsked,
): QualitySummary {
  const all = loggedRounds(book);
  const rounds = inScope(all, asked);
  const { weeks, trend } = weekYields(rounds, day);
  const { pictures, missing } = picturesOf(rounds, book, asked);
  return {
    shopName: book.shop.shopName,
    system: book.shop.units,
    day,
    asked,
    molds: namesOf(all, 'mold'),
    patterns: namesOf(all, 'pattern'),
    rounds: rounds.length,
    weeks,
    ...(trend === undefined ? {} : { trend: trend.verdict }),
    worst: worstGroups(weekYields(all, day).rounds, layerCounts(book)),
    pictures,
    missing,
  };
}

function picturesOf(
  rounds: readonly LoggedRound[],
  { shop }: QualityBook,
  { points, mold, pattern }: QualityAsked,
): Pick<QualitySummary, 'pictures' | 'missing'> {
  const system = shop.units;
  const named = [mold, pattern].filter((one) => nameKey(one) !== '').join(', ');
  const of = named === '' ? '' : `, ${named}`;
  const weighed = lastWeighed(rounds);
  const found: readonly (QualityPicture | string)[] = [
    shareChart(chartSamples(rounds, points), { title: `Bad pieces${of}`, system, points }) ??
      `The control chart of bad pieces needs two ${points}.`,
    defectPareto(rounds, `What was wrong${of}`) ?? 'No bad piece is logged: no defects to rank.',
    yieldPicture(rounds, shop, `Yield against mold top${of}`),
    (weighed === undefined ? undefined : weightChart(rounds, { mold: weighed, system })) ??
      'The weight chart needs two weighed pieces of one mold.',
  ];
  return {
    pictures: found.filter((one) => typeof one !== 'string'),
    missing: found.filter((one) => typeof one === 'string'),
  };
}

/** Layers of a round's pattern, its newest version where the round names none. */
function layerCounts({ patterns }: QualityBook): (round: LoggedRound) => number | undefined {
  const counts = new Map<string, number>();
  const newest = new Map<string, number>();
  for (const { record } of patterns) {
    const { pattern, version } = record;
    if (pattern === undefined || version === undefined) continue;
    const key = nameKey(pattern, version);
    counts.set(key, (counts.get(key) ?? 0) + 1);
    newest.set(nameKey(pattern), Math.max(version, newest.get(nameKey(pattern)) ?? version));
  }
  return ({ pattern, version }) =>
    counts.get(nameKey(pattern, version ?? newest.get(nameKey(pattern))));
}
