import type { Book } from '../../book/book.ts';
import { trimmed } from '../../book/layout/tableCells.ts';
import { yieldRate } from '../../quality/yieldRate.ts';
import { compareYields, type GroupYield } from '../../quality/yields/compareYields.ts';
import { shrunkenYield } from '../../quality/yields/shrunkenYield.ts';
import type { YieldPrior } from '../../quality/yields/yieldPrior.ts';
import { countText } from '../../words/quantityText.ts';
import { type LogGroup, type YieldBy, yieldGroups } from './yieldGroups.ts';

/** Of every interval of the table, as of the function for one yield. */
const CONFIDENCE = 0.95;

const HEADINGS = [
  'Rounds',
  'Poured',
  'Good',
  'Yield',
  'Low',
  'High',
  'Expected',
  'Expected low',
  'Expected high',
  'Note',
] as const;

/** Numbers have an order of their own; names are sorted by what is expected of them. */
const IN_ORDER: readonly YieldBy[] = ['layers', 'mold top', 'month'];

type Cells = readonly (string | number)[];

/** Yields by what the shop wants to know as cells, headings first; a name that loses most comes first. */
export function yieldCells(
  { pourLog, shop }: Pick<Book, 'pourLog' | 'shop'>,
  by: YieldBy,
): readonly Cells[] {
  const { groups, leftOut } = yieldGroups(pourLog, by, shop.units);
  const assumed = { mean: shop.expectedYield, weight: shop.yieldWeight };
  const compared = compareYields(groups, assumed, CONFIDENCE);
  const lines = groups.flatMap((group, index) => {
    const found = compared.groups[index];
    return found ? [{ ...group, ...found }] : [];
  });
  if (!IN_ORDER.includes(by)) lines.sort((one, other) => one.expected - other.expected);
  return [
    [by.slice(0, 1).toUpperCase() + by.slice(1), ...HEADINGS],
    ...lines.map(lineOf),
    ...(groups.length === 0 ? [noteLine('nothing is logged yet')] : [sumLine(groups)]),
    priorLine(compared.prior),
    ...(leftOut.length === 0 ? [] : [noteLine(leftOutText(leftOut))]),
  ];
}

function lineOf(line: GroupYield & LogGroup): Cells {
  const { group, rounds, poured, good, rate, wilson, expected, low, high } = line;
  const shares = [rate, wilson.low, wilson.high, expected, low, high].map(trimmed);
  return [group === '' ? 'not given' : group, rounds, poured, good, ...shares, ''];
}

function sumLine(groups: readonly LogGroup[]): Cells {
  const sum = (of: 'rounds' | 'poured' | 'good') =>
    groups.reduce((all, group) => all + group[of], 0);
  const [poured, good] = [sum('poured'), sum('good')];
  const { rate, low, high } = yieldRate(good, poured, CONFIDENCE);
  return ['all', sum('rounds'), poured, good, ...[rate, low, high].map(trimmed), '', '', '', ''];
}

/** What to expect where nothing is logged: everything above is drawn toward it. */
function priorLine(prior: YieldPrior): Cells {
  const { expected, low, high } = shrunkenYield({ good: 0, poured: 0 }, prior, CONFIDENCE);
  const shares = [expected, low, high].map(trimmed);
  return ['nothing logged yet', '', '', '', '', '', '', ...shares, priorNote(prior)];
}

function priorNote({ groups, weight, ...prior }: YieldPrior): string {
  const worth = `counts as ${countText(Number(weight.toPrecision(3)), 'piece')}`;
  if (prior.from === 'assumption') return `the shop’s assumption: ${WHY[prior.because]}; ${worth}`;
  const held = prior.weightBy === 'record' ? '' : ', which these groups hardly settle';
  return `from the ${groups} groups above; ${worth}${held}`;
}

const WHY = {
  'few groups': 'fewer than five groups do not show how they differ',
  'all good': 'not one piece was bad',
  'all bad': 'not one piece was good',
} as const;

function leftOutText(rows: readonly number[]): string {
  const shown = rows.slice(0, 20).join(', ');
  const more = rows.length > 20 ? ` and ${rows.length - 20} more` : '';
  return `not counted, Pour log rows ${shown}${more}: poured and good must both be given, good no more than poured`;
}

function noteLine(text: string): Cells {
  return [...Array<string>(HEADINGS.length).fill(''), text];
}
