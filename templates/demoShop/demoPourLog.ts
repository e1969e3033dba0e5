import type { TypedRow } from '../../shared/book/layout/typedRow.ts';
import type { ORDERS } from '../../shared/book/tables/orders.ts';
import {
  DEFECT_KEYS,
  type POUR_LOG,
  TEAR_KEYS,
  type TEAR_TESTS,
} from '../../shared/book/tables/pourLog.ts';

type Defects = Partial<Record<(typeof DEFECT_KEYS)[number], number>>;

/** What only some rounds have: a tear test of each joint, several weights [oz], the round that a correction is about and its entry. */
interface MoreOfRound {
  readonly joints?: readonly (typeof TEAR_TESTS)[number][];
  readonly weights?: string;
  readonly round?: number;
  readonly corrects?: string;
}

/** Order, logged at, who, mold top [°F], cup temperatures [°F], gaps [min], poured, good, bad by defect, tear test, piece weight [oz], notes, more. */
type LogLine = readonly [
  order: string,
  loggedAt: string,
  who: string,
  moldTop: number,
  pours: readonly number[],
  gaps: readonly number[],
  poured: number,
  good: number,
  defects: Defects,
  tearTest: (typeof TEAR_TESTS)[number],
  pieceWeight?: number | null,
  notes?: string,
  more?: MoreOfRound,
];

/** Invented rounds. Cold molds crack, and their layers peel; mold, pattern and version follow from the order. */
// biome-ignore format: one row a line
const LINES: readonly LogLine[] = [
  ['1001', '2026-11-03 09:35', 'AK', 219, [327, 332], [2.9], 16, 15, { shortFill: 1 }, 'tears through', 0.316],
  ['1001', '2026-11-03 10:12', 'AK', 219, [327, 330], [3.1], 16, 16, {}, 'tears through'],
  ['1001', '2026-11-03 10:50', 'AK', 210, [326, 332], [2.4], 16, 15, { unevenLine: 1 }, 'tears through', 0.319],
  ['1001', '2026-11-03 11:26', 'AK', 215, [330, 326], [2.3], 16, 15, { trappedAir: 1 }, 'tears through'],
  ['1001', '2026-11-03 12:05', 'BR', 189, [330, 328], [2.7], 16, 11, { coldCrack: 1, peeledLayer: 1, unevenLine: 3 }, 'tears in part', 0.323, 'Door open, draft on the plate.', { joints: ['tears in part'], weights: '0.323, 0.309, 0.331 oz' }],
  ['1001', '2026-11-03 12:44', 'BR', 210, [325, 333], [3.1], 16, 14, { unevenLine: 1, trappedAir: 1 }, 'tears through'],
  ['1001', '2026-11-03 13:23', 'BR', 218, [330, 325], [2.0], 16, 15, { flash: 1 }, 'not tested', 0.311],
  ['1001', '2026-11-03 13:56', 'BR', 217, [327, 331], [2.5], 16, 15, { shortFill: 1 }, 'tears through'],
  ['1001', '2026-11-03 14:34', 'AK', 212, [329, 326], [2.1], 16, 16, {}, 'not tested', 0.312, '', { weights: '0.312, 0.315, 0.311 oz' }],
  ['1001', '2026-11-03 15:16', 'AK', 212, [328, 333], [2.6], 16, 13, { scorch: 1, dimple: 1, shortFill: 1 }, 'tears through', null, 'Bottom of the cup was overheated.'],
  ['1001', '2026-11-03 15:55', 'AK', 216, [325, 328], [2.4], 16, 16, {}, 'not tested', 0.311],
  ['1002', '2026-11-05 09:49', 'BR', 152, [326, 329, 326], [1.7, 2.1], 12, 4, { coldCrack: 3, peeledLayer: 4, unevenLine: 1 }, 'peels clean', 0.307, 'Dial had reached its mark, the mold had not.', { joints: ['peels clean', 'peels clean'], weights: '0.307, 0.298, 0.301 oz' }],
  ['1002', '2026-11-05 10:29', 'BR', 171, [331, 337, 324], [1.9, 2.3], 12, 7, { coldCrack: 2, peeledLayer: 2, unevenLine: 1 }, 'peels clean', null, 'Waited too short.', { joints: ['peels clean', 'tears in part'] }],
  ['1002', '2026-11-05 11:06', 'BR', 217, [324, 334, 325], [2.1, 2.1], 12, 9, { bleed: 1, trappedAir: 2 }, 'tears through', 0.309],
  ['1002', '2026-11-05 11:48', 'BR', 214, [326, 331, 331], [2.6, 1.8], 12, 11, { dimple: 1 }, 'tears through'],
  ['1002', '2026-11-05 12:27', 'BR', 209, [331, 330, 332], [1.7, 2.0], 12, 12, {}, 'tears through', 0.314, '', { joints: ['tears through', 'tears through'], weights: '0.314, 0.312, 0.315 oz' }],
  ['1002', '2026-11-05 13:07', 'BR', 209, [324, 332, 327], [2.2, 2.1], 12, 10, { shortFill: 1, trappedAir: 1 }, 'tears through'],
  ['1002', '2026-11-05 13:51', 'CM', 215, [333, 337, 326], [1.9, 1.3], 12, 12, {}, 'not tested', 0.312],
  ['1002', '2026-11-05 14:28', 'CM', 208, [327, 332, 325], [1.6, 2.1], 12, 12, {}, 'not tested'],
  ['1002', '2026-11-05 15:11', 'CM', 218, [331, 329, 331], [2.4, 1.6], 12, 9, { unevenLine: 1, dimple: 1, trappedAir: 1 }, 'not tested', 0.318],
  ['1002', '2026-11-05 15:50', 'CM', 209, [324, 334, 328], [1.3, 2.2], 12, 12, {}, 'tears through'],
  ['1002', '2026-11-05 16:32', 'CM', 216, [328, 333, 333], [1.9, 2.1], 12, 11, { unevenLine: 1 }, 'not tested', 0.308],
  ['1003', '2026-11-10 10:02', 'CM', 164, [324, 337, 333], [2.0, 1.9], 20, 10, { coldCrack: 4, peeledLayer: 4, unevenLine: 2 }, 'peels clean', 0.248, 'First round, mold warm only.', { joints: ['peels clean', 'peels clean'] }],
  ['1003', '2026-11-10 10:39', 'CM', 222, [330, 334, 331], [1.3, 1.9], 20, 19, { dimple: 1 }, 'tears through'],
  ['1003', '2026-11-10 11:09', 'CM', 219, [330, 334, 333], [1.6, 1.8], 20, 18, { flash: 1, scorch: 1 }, 'tears through', 0.247, 'Bottom of the cup was overheated.'],
  ['1003', '2026-11-10 11:51', 'CM', 211, [324, 332, 333], [1.8, 1.4], 20, 18, { bleed: 1, dimple: 1 }, 'not tested'],
  ['1003', '2026-11-10 12:25', 'CM', 213, [325, 329, 333], [1.5, 1.8], 20, 19, { dimple: 1 }, 'tears through', 0.253, '', { joints: ['tears through', 'tears through'] }],
  ['1003', '2026-11-10 12:58', 'AK', 222, [331, 334, 326], [2.0, 1.7], 20, 19, { trappedAir: 1 }, 'not tested'],
  ['1003', '2026-11-10 13:39', 'AK', 218, [333, 333, 333], [1.1, 1.9], 20, 19, { dimple: 1 }, 'not tested', 0.242],
  ['1003', '2026-11-10 14:15', 'AK', 222, [333, 335, 327], [1.3, 2.0], 20, 20, {}, 'tears through'],
  ['1003', '2026-11-10 14:45', 'AK', 217, [328, 333, 328], [1.5, 1.5], 20, 18, { trappedAir: 2 }, 'tears through', 0.251],
  ['1003', '2026-11-10 15:22', 'AK', 218, [326, 330, 324], [1.9, 2.1], 20, 17, { trappedAir: 1, other: 1, unevenLine: 1 }, 'not tested', null, 'Dirt in one cavity.'],
  ['1004', '2026-11-13 09:21', 'AK', 157, [326, 331, 330, 328], [1.3, 1.2, 1.8], 6, 3, { coldCrack: 1, peeledLayer: 1, unevenLine: 1 }, 'peels clean', 0.536, 'Poured on the dial.', { joints: ['peels clean', 'peels clean', 'tears in part'] }],
  ['1004', '2026-11-13 09:55', 'AK', 175, [330, 337, 329, 327], [2.1, 1.0, 1.7], 6, 4, { coldCrack: 1, peeledLayer: 1 }, 'peels clean', null, 'Still climbing.', { joints: ['peels clean', 'tears in part', 'tears through'] }],
  ['1004', '2026-11-13 10:36', 'AK', 211, [325, 332, 334, 329], [1.9, 3.1, 1.8], 6, 6, {}, 'tears through', 0.545, '', { joints: ['tears through', 'tears through', 'tears through'] }],
  ['1004', '2026-11-13 11:15', 'AK', 209, [329, 330, 335, 327], [1.7, 1.0, 2.1], 6, 6, {}, 'tears through'],
  ['1004', '2026-11-13 11:55', 'AK', 209, [332, 333, 331, 324], [1.3, 1.2, 1.2], 6, 6, {}, 'tears through', 0.539],
  ['1004', '2026-11-13 12:36', 'AK', 212, [327, 330, 333, 326], [1.8, 2.3, 2.2], 6, 6, {}, 'not tested'],
  ['1004', '2026-11-13 13:11', 'BR', 210, [325, 336, 333, 326], [1.5, 1.7, 1.7], 6, 6, {}, 'tears through', 0.54],
  ['1004', '2026-11-13 13:51', 'BR', 211, [327, 331, 332, 331], [1.4, 1.8, 2.6], 6, 5, { unevenLine: 1 }, 'tears through'],
  ['1004', '2026-11-13 14:31', 'BR', 212, [324, 336, 332, 328], [1.4, 1.2, 1.3], 6, 5, { shortFill: 1 }, 'not tested', 0.541],
  ['1004', '2026-11-13 15:08', 'BR', 220, [325, 331, 329, 329], [1.0, 1.6, 1.5], 6, 5, { bleed: 1 }, 'not tested'],
  ['1004', '2026-11-13 15:45', 'BR', 211, [324, 332, 334, 325], [1.8, 1.6, 2.4], 6, 6, {}, 'not tested', 0.547],
  ['1004', '2026-11-13 16:28', 'BR', 211, [333, 334, 335, 332], [2.4, 1.9, 1.5], 6, 6, {}, 'not tested'],
  ['1005', '2026-11-19 10:34', 'BR', 167, [325, 337, 324], [2.3, 2.6], 8, 4, { coldCrack: 1, peeledLayer: 2, unevenLine: 1 }, 'peels clean', 0.556, 'Plate went on late.', { joints: ['tears in part', 'peels clean'] }],
  ['1005', '2026-11-19 11:20', 'BR', 213, [326, 337, 330], [2.2, 2.7], 8, 7, { dimple: 1 }, 'tears through'],
  ['1005', '2026-11-19 11:59', 'BR', 215, [333, 335, 332], [1.7, 2.0], 8, 5, { trappedAir: 2, dimple: 1 }, 'tears through', 0.549],
  ['1005', '2026-11-19 12:41', 'BR', 211, [330, 337, 333], [2.5, 2.3], 8, 7, { shortFill: 1 }, 'not tested'],
  ['1005', '2026-11-19 13:23', 'BR', 216, [333, 330, 324], [2.6, 2.2], 8, 8, {}, 'not tested', 0.54],
  ['1005', '2026-11-19 14:08', 'BR', 209, [329, 336, 332], [2.2, 1.6], 8, 7, { other: 1 }, 'not tested', null, 'Dirt in one cavity.'],
  ['1005', '2026-11-19 14:47', 'BR', 214, [329, 335, 332], [2.0, 2.5], 8, 8, {}, 'tears through', 0.552],
  ['1005', '2026-11-19 15:32', 'BR', 209, [324, 336, 328], [2.6, 2.1], 8, 7, { dimple: 1 }, 'not tested'],
  ['1006', '2026-11-24 09:35', 'AK', 181, [331, 337, 324], [2.3, 2.2], 16, 10, { coldCrack: 1, peeledLayer: 1, unevenLine: 4 }, 'tears in part', 0.309, 'Plate had tripped, restarted.', { joints: ['tears in part', 'tears through'] }],
  ['1006', '2026-11-24 10:14', 'AK', 220, [325, 331, 332], [2.1, 1.9], 16, 16, {}, 'not tested'],
  ['1006', '2026-11-24 10:52', 'AK', 217, [324, 329, 327], [1.7, 1.8], 16, 15, { unevenLine: 1 }, 'tears through', 0.316],
  ['1006', '2026-11-24 11:35', 'AK', 215, [327, 335, 324], [2.3, 2.1], 16, 15, { dimple: 1 }, 'not tested'],
  ['1006', '2026-11-24 12:13', 'CM', 219, [329, 335, 324], [3.2, 2.1], 16, 15, { dimple: 1 }, 'tears through', 0.31],
  ['1006', '2026-11-24 12:54', 'CM', 216, [330, 337, 327], [2.1, 1.9], 16, 14, { shortFill: 1, dimple: 1 }, 'not tested'],
  ['1006', '2026-11-24 13:32', 'CM', 220, [332, 332, 324], [1.9, 2.7], 16, 16, {}, 'not tested', 0.318],
  ['1006', '2026-11-24 14:13', 'CM', 213, [327, 332, 325], [2.5, 1.8], 16, 16, {}, 'not tested'],
  ['1006', '2026-11-24 14:40', 'CM', 216, [330, 337, 327], [2.1, 1.9], 16, 13, { shortFill: 2, dimple: 1 }, 'tears through', 0.314, 'Counted again at the bench: a short tail was missed.', { round: 6, corrects: 'demo-58', joints: ['tears through', 'tears through'] }],
];

type OrderRow = TypedRow<typeof ORDERS>;

/** The rounds as rows of the log; mold, pattern and version are those of the order. */
export function demoPourLog(orders: readonly OrderRow[]): readonly TypedRow<typeof POUR_LOG>[] {
  return LINES.map((line, index) =>
    logRow(
      line,
      index,
      orders.find(({ order }) => order === line[0]),
    ),
  );
}

function logRow(line: LogLine, index: number, ordered: OrderRow = {}): TypedRow<typeof POUR_LOG> {
  const [order, loggedAt, who, moldTop, pours, gaps, poured, good, defects, tearTest] = line;
  const [, , , , , , , , , , pieceWeight, notes, more = {}] = line;
  const { mold, pattern, version } = ordered;
  return {
    run: `R-${order}`,
    round: more.round ?? LINES.slice(0, index + 1).filter(([other]) => other === order).length,
    entry: `demo-${String(index + 1).padStart(2, '0')}`,
    loggedAt,
    order,
    who,
    moldTop,
    poured,
    good,
    tearTest,
    ...(mold && pattern && version ? { mold, pattern, version } : {}),
    ...numbered(['pour1', 'pour2', 'pour3', 'pour4', 'pour5'], pours),
    ...numbered(['gap12', 'gap23', 'gap34', 'gap45'], gaps),
    ...counted(defects),
    ...(pieceWeight ? { pieceWeight } : {}),
    ...numbered(TEAR_KEYS, more.joints ?? []),
    ...(more.weights ? { weights: more.weights } : {}),
    ...(more.corrects ? { corrects: more.corrects } : {}),
    ...(notes ? { notes } : {}),
  };
}

function numbered<Key extends string, Value>(
  keys: readonly Key[],
  values: readonly Value[],
): { [K in Key]?: Value } {
  const row: { [K in Key]?: Value } = {};
  keys.forEach((key, index) => {
    const value = values[index];
    if (value !== undefined) row[key] = value;
  });
  return row;
}

/** A kind of defect that did not occur is a counted 0, not a blank. */
function counted(defects: Defects): Record<(typeof DEFECT_KEYS)[number], number> {
  const row: Record<string, number> = {};
  for (const key of DEFECT_KEYS) row[key] = defects[key] ?? 0;
  return row as Record<(typeof DEFECT_KEYS)[number], number>; // every key was just set
}
