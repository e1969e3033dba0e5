import { readTable } from '../../book/reading/readTable.ts';
import { readShop } from '../../book/settings/readShop.ts';
import { TABLES } from '../../book/tables.ts';
import { yieldCells } from '../../outcomes/yields/yieldCells.ts';
import { YIELD_BY, type YieldBy } from '../../outcomes/yields/yieldGroups.ts';
import { sheetParameter } from '../book/sheetParameter.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';

/** Yields by mold, pattern, person and the like, from every row of *Pour log*. */
export const POUR_YIELD_TABLE: TableFunction = {
  kind: 'table',
  name: 'POUR_YIELD_TABLE',
  family: 'quality',
  about: 'Where pieces are lost: yield by mold, pattern, layers, person, mold top or month.',
  params: {
    by: {
      kind: 'choice',
      choices: YIELD_BY,
      about: 'What the rounds are sorted by.',
      default: 'mold',
    },
    pourLog: sheetParameter('Pour log'),
    shop: sheetParameter('Shop'),
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then one row for each group: rounds, poured, good, yield and its interval, the yield to expect and its interval. Then all together, and what to expect where nothing is logged.',
      kind: 'text',
    },
  ],
  notes:
    'Intervals at 95 %: Wilson for the yield, beta for the yield to expect. That one is drawn toward the mean of all groups, the more the fewer pieces a group has (empirical Bayes, beta-binomial by greatest likelihood; the shop’s own assumption below five groups). Names that lose most come first. A corrected row counts once. Bands of the mold top are 20 °F or 10 °C wide, the lower end included; layers are those with a reading.',
  readsDays: true,
  compute: (ranges, choices) => {
    const { shop } = readShop(ranges['shop'] ?? []);
    const { rows } = readTable(TABLES.pourLog, ranges['pourLog'] ?? []);
    const by = YIELD_BY.find((one) => one === choices['by']) ?? ('mold' satisfies YieldBy);
    return yieldCells({ pourLog: rows, shop }, by);
  },
};
