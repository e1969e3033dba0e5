import type { Missing } from '../../book/missingCells.ts';
import { STOCK_MOVES } from '../../book/tables/stockMoves.ts';
import { describe } from '../../errors/describe.ts';
import type { Rule } from '../../errors/InputError.ts';
import type { MoveRow } from './ledgerTypes.ts';
import type { Move } from './postMove.ts';

type MoveKey = 'material' | 'amount' | 'reason' | 'date' | 'money';

const NEEDED = ['material', 'amount', 'reason', 'date'] as const;

/**
 * What is wrong with a row of *Stock moves*, in plain words. A row that lacks its material, amount or reason is not posted;
 * any other is.
 * @param isListed whether Materials has its material
 */
export function moveProblems(move: MoveRow, isListed: boolean): readonly Missing[] {
  const { material, amount, reason, money } = move.record;
  const problems: Missing[] = [];
  for (const key of NEEDED)
    if (move.record[key] === undefined) problems.push(broken(move, key, { kind: 'given' }));
  if (material !== undefined && !isListed)
    problems.push(broken(move, 'material', { kind: 'known', where: 'Materials' }));
  if (amount === undefined) return problems;
  if (reason === 'counted' && amount < 0) problems.push(broken(move, 'amount', NOT_NEGATIVE));
  if (reason !== 'purchase' || amount < 0) return problems;
  if (money === undefined) problems.push(broken(move, 'money', { kind: 'given' }));
  else if (money < 0) problems.push(broken(move, 'money', NOT_NEGATIVE));
  return problems;
}

const NOT_NEGATIVE: Rule = { kind: 'at least', limit: 0 };

function broken({ row, record }: MoveRow, key: MoveKey, rule: Rule): Missing {
  const { heading } = STOCK_MOVES.columns[key];
  const text = describe({ field: heading.toLowerCase(), rule, value: record[key] });
  return { sheet: STOCK_MOVES.sheet, row, heading, text };
}

/** The row as it can be posted, or undefined where it cannot. */
export function readMove({ row, record }: MoveRow, date: string): Move | undefined {
  const { material, amount, reason, money, lot = '' } = record;
  if (material === undefined || amount === undefined || reason === undefined) return undefined;
  if (reason === 'counted' && amount < 0) return undefined;
  const isUsable = money !== undefined && (money >= 0 || amount < 0);
  return { row, date, lot, reason, amount, money: isUsable ? money : undefined };
}
