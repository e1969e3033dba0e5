import { createContext, runInContext } from 'node:vm';
import { headingOf } from '../../shared/book/reading/headingOf.ts';
import { SHOP_HEADINGS } from '../../shared/book/settings/settings.ts';
import { MATERIALS } from '../../shared/book/tables/materials.ts';
import { STOCK_MOVES } from '../../shared/book/tables/stockMoves.ts';

type Cells = readonly (readonly (string | number)[])[];

export interface StockTime {
  readonly name: string;
  readonly moves: number;
  readonly milliseconds: number;
}

const NAMES = 40;
const RUNS = 3;

/**
 * Time of the built sheet functions over *Stock moves* of growing length: a purchase of 40 units for every 19 uses, a
 * count now and then, 40 materials in turn, a lot for each purchase. Text days, since no platform turns dates here.
 */
export function stockTimes(code: string, counts: readonly number[]): readonly StockTime[] {
  const context = createContext({});
  runInContext(code, context);
  const materials = materialCells();
  const shop: Cells = [SHOP_HEADINGS.slice(0, 3)];
  return counts.flatMap((moves) => {
    context['call'] = { moves: moveCells(moves), materials, shop };
    return [
      {
        name: 'POUR_STOCK',
        call: `POUR_STOCK('materials', call.moves, call.materials, call.shop)`,
      },
      { name: 'POUR_LOTS', call: `POUR_LOTS('L-7', call.moves, call.materials)` },
    ].map(({ name, call }) => ({ name, moves, milliseconds: timed(call) }));
  });

  /** The quickest of a few runs: what else the machine does only adds. */
  function timed(call: string): number {
    const times = Array.from({ length: RUNS }, () => {
      const start = performance.now();
      const answer: unknown = runInContext(call, context);
      if (typeof answer !== 'object') throw new Error(`${call} answered ${String(answer)}`);
      return performance.now() - start;
    });
    return Math.min(...times);
  }
}

function materialCells(): Cells {
  const columns = Object.entries(MATERIALS.columns);
  const known: Readonly<Record<string, string | number>> = {
    kind: 'colorant',
    packSize: 4,
    packUnit: 'fl oz',
    packPrice: 9.5,
    reorderPoint: 1,
  };
  const rows = Array.from({ length: NAMES }, (_, index) =>
    columns.map(([key]) => (key === 'material' ? `Material ${index}` : (known[key] ?? ''))),
  );
  return [columns.map(([, column]) => headingOf(column, 'US')), ...rows];
}

/** Rows of *Stock moves*, heading first. */
function moveCells(count: number): Cells {
  const columns = Object.entries(STOCK_MOVES.columns);
  const rows = Array.from({ length: count }, (_, index) => {
    const turn = Math.floor(index / NAMES) % 20;
    const day = new Date(Date.UTC(2020, 0, 1 + Math.floor(index / 25)));
    const isIn = turn === 0;
    const row: Readonly<Record<string, string | number>> = {
      date: day.toISOString().slice(0, 10),
      material: `Material ${index % NAMES}`,
      lot: isIn ? `L-${Math.floor(index / NAMES)}` : '',
      reason: isIn ? 'purchase' : turn === 19 && index % 7 === 0 ? 'counted' : 'used',
      amount: isIn ? 40 : turn === 19 && index % 7 === 0 ? 5 : -2,
      ...(isIn ? { money: 95 } : { order: String(1000 + (index % 5000)) }),
    };
    return columns.map(([key]) => row[key] ?? '');
  });
  return [columns.map(([, column]) => headingOf(column, 'US')), ...rows];
}
