import { nameKey } from '../../book/bookIndex.ts';
import { readTable } from '../../book/reading/readTable.ts';
import { readShop } from '../../book/settings/readShop.ts';
import { TABLES } from '../../book/tables.ts';
import { CHART_LIMITS, chartCells } from '../../outcomes/quality/chartCells.ts';
import { CHART_POINTS, chartSamples } from '../../outcomes/quality/chartSamples.ts';
import { loggedRounds } from '../../outcomes/quality/loggedRounds.ts';
import { sheetParameter } from '../book/sheetParameter.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';

/** Takes every row of the log. */
const ALL = 'all';

/** The rows of a control chart of bad pieces, for the sheet's own charts. */
export const POUR_CHART: TableFunction = {
  kind: 'table',
  name: 'POUR_CHART',
  family: 'quality',
  about:
    'Control chart of bad pieces: share, center line, limits and signals of every round or run.',
  params: {
    of: {
      kind: 'text',
      about: `A mold or a pattern of the log, or ${ALL}.`,
    },
    points: {
      kind: 'choice',
      choices: CHART_POINTS,
      about: 'One point for each round, or for each run with all its rounds.',
      default: 'rounds',
    },
    limits: {
      kind: 'choice',
      choices: CHART_LIMITS,
      about:
        'Limits from all points, or worked out once more without those beyond a limit: right only once their causes are found and mended.',
      default: 'all points',
    },
    pourLog: sheetParameter('Pour log'),
    shop: sheetParameter('Shop'),
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then one row a point, in the order of the log: poured, bad, share, center line, limits for its own number of pieces, and the signal that ends there.',
      kind: 'text',
    },
  ],
  notes:
    'p-chart with three standard deviations and the four run rules of the Western Electric handbook (beyond a limit; two of three beyond two, four of five beyond one standard deviation; eight in a row on one side). Where luck alone (binomial) puts a point as far out, or breaks another rule, more often than 1 in 100, there is no signal. Rows that another row corrects do not count.',
  readsDays: true,
  compute: (ranges, choices) => {
    const { rows: pourLog } = readTable(TABLES.pourLog, ranges['pourLog'] ?? []);
    const { shop } = readShop(ranges['shop'] ?? []);
    const name = nameKey(choices['of']);
    const rounds = loggedRounds({ pourLog, shop }).filter(
      ({ mold, pattern }) => name === ALL || nameKey(mold) === name || nameKey(pattern) === name,
    );
    const points = CHART_POINTS.find((one) => one === choices['points']) ?? 'rounds';
    const limits = CHART_LIMITS.find((one) => one === choices['limits']) ?? 'all points';
    return chartCells(chartSamples(rounds, points), { limits, points });
  },
};
