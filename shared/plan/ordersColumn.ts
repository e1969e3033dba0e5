import { minutesOfWork } from '../batch/minutesOfWork.ts';
import type { Book } from '../book/book.ts';
import { type BookIndex, indexBook, type OrderRow } from '../book/bookIndex.ts';
import type { Missing } from '../book/missingCells.ts';
import { headingOf } from '../book/reading/headingOf.ts';
import { ORDERS } from '../book/tables/orders.ts';
import { requireChoice } from '../errors/requireChoice.ts';
import { MEASURES, type UnitSystem } from '../units/measures.ts';
import { fromEngine } from '../units/toEngine.ts';
import { UNITS } from '../units/units.ts';
import { rounded } from '../words/quantityText.ts';
import { planAmounts } from './amounts/planAmounts.ts';
import { findOrder } from './facts/findOrder.ts';
import { planRow } from './planOrder.ts';
import type { OrderPlan, PlanResult } from './planTypes.ts';
import { plateOnText } from './plateOnText.ts';

/** The computed columns of *Orders* by their headings, as the formula names them. */
export const ORDERS_COLUMNS = [
  'pieces to pour',
  'rounds',
  'plastisol',
  'cups',
  'plate on',
  'minutes of work',
  'warnings',
] as const;

type OrdersColumn = (typeof ORDERS_COLUMNS)[number];

/** What these say of an order; no plate is heated for them, which takes nearly all of a plan's time. */
const AMOUNTS = {
  'pieces to pour': ({ pieces }: Amounts) => pieces.toPour,
  rounds: ({ pieces }: Amounts) => pieces.rounds,
  plastisol: ({ plastisolVolume }: Amounts, system: UnitSystem) =>
    oneTenth(fromEngine(plastisolVolume, MEASURES.liquidVolume[system])),
  cups: ({ cups }: Amounts) => cups,
  'minutes of work': ({ work }: Amounts) => rounded(minutesOfWork(work), 1, 'up'),
} satisfies { readonly [Column in OrdersColumn]?: unknown };

type Amounts = Extract<ReturnType<typeof planAmounts>, { readonly kind: 'amounts' }>;

type AmountColumn = keyof typeof AMOUNTS;

type HeatColumn = Exclude<OrdersColumn, AmountColumn>;

type Shown = string | number;

/**
 * One computed column of *Orders* as cells: its heading, then one cell for each row of the sheet, blank rows blank, trailing blanks left off.
 * @param column - one of {@link ORDERS_COLUMNS}
 * @param rowsOnSheet - rows of the range, heading row included
 * @throws InputError for a column that is not computed
 */
export function ordersColumn(
  book: Book,
  column: string,
  rowsOnSheet: number,
): readonly (readonly [Shown])[] {
  const wanted = requireChoice(column, 'column', ORDERS_COLUMNS);
  const index = indexBook(book);
  const cells: Shown[] = Array.from({ length: Math.max(0, rowsOnSheet - 1) }, () => '');
  for (const row of book.orders)
    cells[row.row - 2] = isAmount(wanted)
      ? amountOf(index, row, wanted)
      : shown(planRow(index, row), wanted);
  while (cells.length > 0 && cells[cells.length - 1] === '') cells.pop();
  return [[ordersHeading(wanted, book)], ...cells.map((cell) => [cell] as const)];
}

function isAmount(column: OrdersColumn): column is AmountColumn {
  return column in AMOUNTS;
}

function amountOf(index: BookIndex, row: OrderRow, column: AmountColumn): Shown {
  const found = findOrder(index, row);
  if (found.kind === 'missing') return '';
  const amounts = planAmounts(index, found.facts);
  return amounts.kind === 'missing' ? '' : AMOUNTS[column](amounts, index.book.shop.units);
}

function ordersHeading(column: OrdersColumn, { shop }: Book): string {
  const declared = Object.values(ORDERS.columns).find(
    ({ heading }) => heading.toLowerCase() === column,
  );
  const heading = declared ? headingOf(declared, shop.units) : column;
  const unit = UNITS[MEASURES.liquidVolume[shop.units]].label;
  return column === 'plastisol' ? `${heading} (${unit})` : heading;
}

function shown(plan: PlanResult, column: HeatColumn): Shown {
  if (plan.kind === 'plan') return figureOf(plan, column);
  return column === 'warnings' ? plan.missing.map(missingText).join('; ') : '';
}

function figureOf(plan: OrderPlan, column: HeatColumn): Shown {
  switch (column) {
    case 'plate on':
      return plan.plate.kind === 'reachable' ? plateOnText(plan, plan.plate) : '';
    case 'warnings':
      return plan.warnings.map((warning) => warning.text).join(' ');
  }
}

/** Enough is weighed out: to the next tenth of the shop's unit. */
function oneTenth(volume: number): number {
  return rounded(volume * 10, 1, 'up') / 10;
}

/** Where something is missing and what: `Molds row 3: cavity width must be given in mm, got nothing`. */
function missingText({ sheet, row, text }: Missing): string {
  return `${row === undefined ? sheet : `${sheet} row ${row}`}: ${text}`;
}
