import type { Book } from '../book/book.ts';
import { headingOf } from '../book/heading.ts';
import { ORDERS } from '../book/tables/orders.ts';
import { requireChoice } from '../errors/requireChoice.ts';
import { fromEngine } from '../units/convert.ts';
import { MEASURES } from '../units/measures.ts';
import { UNITS } from '../units/units.ts';
import { indexBook } from './bookIndex.ts';
import type { Missing, OrderPlan, PlanResult } from './plan.ts';
import { planRow } from './planOrder.ts';
import { rounded } from './say.ts';
import { plateOnText } from './sections/plateSection.ts';

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
  for (const row of book.orders) cells[row.row - 2] = shown(planRow(index, row), wanted);
  while (cells.length > 0 && cells[cells.length - 1] === '') cells.pop();
  return [[ordersHeading(wanted, book)], ...cells.map((cell) => [cell] as const)];
}

function ordersHeading(column: OrdersColumn, { shop }: Book): string {
  const declared = Object.values(ORDERS.columns).find(
    ({ heading }) => heading.toLowerCase() === column,
  );
  const heading = declared ? headingOf(declared, shop.units) : column;
  const unit = UNITS[MEASURES.liquidVolume[shop.units]].label;
  return column === 'plastisol' ? `${heading} (${unit})` : heading;
}

function shown(plan: PlanResult, column: OrdersColumn): Shown {
  if (plan.kind === 'plan') return figureOf(plan, column);
  return column === 'warnings' ? plan.missing.map(missingText).join('; ') : '';
}

function figureOf(plan: OrderPlan, column: OrdersColumn): Shown {
  switch (column) {
    case 'pieces to pour':
      return plan.pieces.toPour;
    case 'rounds':
      return plan.pieces.rounds;
    case 'plastisol':
      return oneTenth(fromEngine(plan.plastisolVolume, MEASURES.liquidVolume[plan.system]));
    case 'cups':
      return plan.cups;
    case 'plate on':
      return plan.plate.kind === 'reachable' ? plateOnText(plan, plan.plate) : '';
    case 'minutes of work':
      return rounded(plan.minutesOfWork, 1, 'up');
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
