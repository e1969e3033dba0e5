import type { ICellData } from '@univerjs/core';
import type { Edit } from './callQueue.ts';
import type { Box } from './parseA1.ts';
import { core, sheets } from './univer.ts';

/** What a person's change is to a trigger: its cells and, for a single one, its value as text; undefined for a change of looks. */
export function editOf(id: string, params: unknown): Edit | undefined {
  if (id !== sheets.SetRangeValuesMutation.id) return undefined;
  // The host has looked at both before it took the change.
  const { subUnitId, cellValue } = params as { subUnitId: string; cellValue?: Cells };
  const changed = Object.entries(cellValue ?? {}).flatMap(([row, cells]) =>
    Object.entries(cells ?? {}).flatMap(([column, cell]) =>
      cell === null || 'v' in cell || 'f' in cell
        ? [{ row: Number(row), column: Number(column), cell }]
        : [],
    ),
  );
  const [first] = changed;
  if (first === undefined) return undefined;
  const rows = changed.map(({ row }) => row);
  const columns = changed.map(({ column }) => column);
  const box: Box = {
    startRow: Math.min(...rows),
    endRow: Math.max(...rows),
    startColumn: Math.min(...columns),
    endColumn: Math.max(...columns),
  };
  const value = first.cell?.v;
  const isOne = changed.length === 1 && value !== undefined && value !== null;
  return { sheet: subUnitId, box, ...(isOne && { value: textOf(first.cell, value) }) };
}

function textOf(cell: ICellData | null, value: unknown): string {
  if (cell?.t !== core.CellValueType.BOOLEAN) return String(value);
  return value === 1 || value === true ? 'TRUE' : 'FALSE';
}

type Cells = Readonly<Record<string, Readonly<Record<string, ICellData | null>> | null>>;
