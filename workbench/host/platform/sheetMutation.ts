import type { Box } from '../parseA1.ts';
import { sheetSize } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { type Session, writeMethod } from './session.ts';
import { type SheetRef, sheetOf } from './sheetOf.ts';

export function wholeSheet(session: Session, ref: SheetRef): Box {
  const { rows, columns } = sheetSize(sheetOf(session, ref));
  return { startRow: 0, startColumn: 0, endRow: rows - 1, endColumn: columns - 1 };
}

export type Dimension = 'rows' | 'columns';

/** Whole rows or columns from a place counted from 1. */
export function rowsOrColumns(
  session: Session,
  ref: SheetRef,
  kind: Dimension,
  first: number,
  count: number,
): Box {
  const box = wholeSheet(session, ref);
  if (count < 1) throw new Error(`The number of ${kind} must be at least 1.`);
  return kind === 'rows'
    ? { ...box, startRow: first - 1, endRow: first + count - 2 }
    : { ...box, startColumn: first - 1, endColumn: first + count - 2 };
}

/** Runs a mutation that names one sheet. */
export function sheetMutation(
  id: string,
  params: (session: Session, ref: SheetRef, args: readonly unknown[]) => object,
) {
  return writeMethod<SheetRef>((session, ref, args) => {
    const target = { unitId: session.platform.engine.unit, subUnitId: ref.sheet };
    session.platform.engine.mutate(id, { ...target, ...params(session, ref, args) }, 'host');
    return SELF;
  });
}
