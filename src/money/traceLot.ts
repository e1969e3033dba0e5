import { readTable } from '../../shared/book/reading/readTable.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { TraceAnswer, TracePayload } from '../../shared/commands/stockCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { ledger } from '../../shared/money/stock/ledger.ts';
import { lotTrace } from '../../shared/money/stock/lotTrace.ts';
import { readCells } from '../platform/workbook.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';

/**
 * Page call: where a lot went, and which lots are in an order or a run.
 * @param payload `{ name }`
 */
export function traceLot(payload: unknown): TraceAnswer | Refused {
  const read = readPayload<TracePayload>({ name: NEEDED_TEXT }, payload);
  if (read.kind === 'refused') return read;
  const { name } = read.value;
  const moves = readTable(TABLES.stockMoves, readCells(TABLES.stockMoves.sheet));
  const materials = readTable(TABLES.materials, readCells(TABLES.materials.sheet));
  return { kind: 'ok', name, ...lotTrace(ledger(moves.rows, materials.rows), name) };
}
