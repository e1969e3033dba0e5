import type { ICellData } from '@univerjs/core';
import type { Host } from './Host.ts';
import type { HostState } from './hostState.ts';
import { firstBroken } from './platform/checkValidation.ts';
import { sheetById } from './sheetNamed.ts';
import { messageOf } from './standIn/runJob.ts';
import { sheets } from './univer.ts';

type Change = Parameters<Host['apply']>[0];

/** Mutations a window may make: those of its grid, its rules, names and filters; never results of calculation. */
const FAMILIES =
  /^(sheet|data-validation|sheets-filter)\.mutation\.|^formula\.mutation\.(set|remove)-defined-name$/;

/** Applies a window's change, unless rows, columns or sheets moved since the window made it. */
export function applyChange(state: HostState, change: Change): ReturnType<Host['apply']> {
  if (change.madeAt < state.layoutSequence()) {
    return { kind: 'stale', because: 'rows, columns or sheets moved since the change was made' };
  }
  if (!FAMILIES.test(change.id)) return refused(`a window may not make the change ${change.id}`);
  const { params } = change;
  if (typeof params !== 'object' || params === null) return refused('the change has no parameters');
  try {
    const broken = brokenCell(state, change.id, params);
    if (broken) return refused(`the value in ${broken} is not one its rule allows`);
    const done = state.engine.mutate(
      change.id,
      { ...params, unitId: state.engine.unit },
      change.origin,
    );
    return done
      ? { kind: 'applied', sequence: state.sequence() }
      : refused(`the workbook did not take the change ${change.id}`);
  } catch (error) {
    return refused(messageOf(error));
  }
}

function refused(because: string): ReturnType<Host['apply']> {
  return { kind: 'refused', because };
}

function brokenCell(state: HostState, id: string, params: object): string | undefined {
  if (id !== sheets.SetRangeValuesMutation.id) return undefined;
  // The id says what the parameters are; a window may send anything, so both are looked at first.
  const { subUnitId, cellValue } = params as Record<string, unknown>;
  if (typeof subUnitId !== 'string') throw new Error('the change names no sheet');
  sheetById(state.engine, subUnitId);
  if (typeof cellValue !== 'object' || cellValue === null) return undefined;
  return firstBroken(state.engine, subUnitId, cellsOf(cellValue));
}

/** Cells with a value, without those a window deletes. */
function cellsOf(cellValue: object): Record<number, Record<number, ICellData>> {
  const rows = Object.entries(cellValue).map(([row, cells]: [string, unknown]) => {
    const kept = Object.entries(cells ?? {}).filter(
      ([, cell]) => typeof cell === 'object' && cell !== null,
    );
    return [row, Object.fromEntries(kept)] as const;
  });
  return Object.fromEntries(rows);
}
