import type { MaterialRow } from '../../book/bookIndex.ts';
import { nameKey } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { type Account, openAccount } from './account.ts';
import type { Ledger, MaterialStock, MoveRow, PostedMove, StockCount } from './ledgerTypes.ts';
import { moveProblems, readMove } from './moveProblems.ts';
import { type DatedMove, orderedMoves } from './orderedMoves.ts';
import { type Posting, postMove } from './postMove.ts';

interface Book {
  readonly material: string;
  readonly record: MaterialRow['record'] | undefined;
  readonly account: Account;
  readonly counts: StockCount[];
  moveCount: number;
  negative: MaterialStock['negative'];
}

/**
 * Everything that *Stock moves* says about every material, in one pass: what is on hand, its value at the weighted average
 * after each purchase (perpetual), the lots by first in, first out, and every move with its cost.
 *
 * value on hand = paid for purchases - costs of all moves; the same holds for the lots. A lot that a move names is taken,
 * else the oldest. A count sets what is there. Stock below nothing is named with its move and reckoned at the last price;
 * the purchase that follows settles it.
 * @param materials rows of *Materials*; a material that they do not list is kept and named
 */
export function ledger(moves: readonly MoveRow[], materials: readonly MaterialRow[]): Ledger {
  const problems: Missing[] = [];
  const books = openBooks(materials);
  const posted: PostedMove[] = [];
  for (const dated of orderedMoves(moves)) {
    const key = nameKey(dated.move.record.material);
    const isListed = books.get(key)?.record !== undefined;
    problems.push(...moveProblems(dated.move, isListed));
    const posting = postTo(books, key, dated, problems);
    if (posting) posted.push(posting);
  }
  problems.push(...unitProblems(materials, new Set(posted.map(({ key }) => key))));
  const stocks = new Map<string, MaterialStock>();
  for (const [key, book] of books) stocks.set(key, stockOf(key, book));
  return { stocks, moves: posted, problems };
}

/** Materials that moved in a unit that nobody knows. */
function unitProblems(materials: readonly MaterialRow[], moved: ReadonlySet<string>): Missing[] {
  return materials.flatMap(({ row, record }) => {
    if (record.packUnit !== undefined || !moved.has(nameKey(record.material))) return [];
    const text = `pack unit of ${record.material} must be given: its moves are counted in it`;
    return [{ sheet: 'Materials', row, heading: 'Pack unit', text }];
  });
}

function openBooks(materials: readonly MaterialRow[]): Map<string, Book> {
  const books = new Map<string, Book>();
  for (const { record } of materials) {
    const key = nameKey(record.material);
    if (key !== '' && !books.has(key)) books.set(key, openBook(record.material ?? '', record));
  }
  return books;
}

function openBook(material: string, record?: MaterialRow['record']): Book {
  const { packPrice, packSize } = record ?? {};
  const listPrice =
    packPrice === undefined || packSize === undefined ? undefined : packPrice / packSize;
  return {
    material,
    record,
    account: openAccount(listPrice),
    counts: [],
    moveCount: 0,
    negative: undefined,
  };
}

function postTo(
  books: Map<string, Book>,
  key: string,
  { move, date }: DatedMove,
  problems: Missing[],
): PostedMove | undefined {
  const read = readMove(move, date);
  if (read === undefined) return undefined;
  const { record, row } = move;
  const book = books.get(key) ?? openBook(record.material ?? '');
  books.set(key, book);
  const before = book.account.onHand;
  const posting = postMove(book.account, read);
  book.moveCount += 1;
  noteCount(book, read, posting);
  noteNegative(book, { row, date, before }, problems);
  const { change, paid, cost, fifoCost, lots } = posting;
  return {
    row,
    date,
    key,
    reason: read.reason,
    order: record.order ?? '',
    run: record.run ?? '',
    change,
    paid,
    cost,
    fifoCost,
    lots,
    isLotNamed: read.lot !== '',
  };
}

function noteCount(
  { counts }: Book,
  { row, date, lot, amount }: { row: number; date: string; lot: string; amount: number },
  { change, count }: Posting,
): void {
  if (count) counts.push({ row, date, lot, counted: amount, difference: change, ...count });
}

/** The move that takes a material from something to less than nothing is the one to look at. */
function noteNegative(
  book: Book,
  { row, date, before }: { row: number; date: string; before: number },
  problems: Missing[],
): void {
  const { account, material, record } = book;
  if (account.onHand >= 0) {
    book.negative = undefined;
    return;
  }
  if (before < 0) return;
  book.negative = { row, date, onHand: account.onHand };
  const unit = record?.packUnit === undefined ? '' : ` ${record.packUnit}`;
  problems.push({
    sheet: 'Stock moves',
    row,
    heading: 'Amount',
    text: `this move${date === '' ? '' : ` of ${date}`} takes ${material} to ${formatPlain(account.onHand)}${unit}: a purchase or a count is missing before it, or its amount is wrong`,
  });
}

function stockOf(
  key: string,
  { material, record, account, counts, moveCount, negative }: Book,
): MaterialStock {
  const { onHand, value, rate, isBought, queue, boughtAmount, boughtMoney, cost, fifoCost } =
    account;
  const lots = queue.all.layers
    .filter(({ left }) => left > 0)
    .map(({ lot, date, row, left, price }) => ({ lot, date, row, left, value: left * price }));
  const unit = record?.packUnit;
  return {
    material,
    key,
    ...(unit === undefined ? {} : { unit }),
    onHand,
    value,
    ...(isBought && rate !== undefined ? { average: rate } : {}),
    lots,
    fifoValue: lots.reduce((sum, lot) => sum + lot.value, 0) - account.owed,
    bought: { amount: boughtAmount, money: boughtMoney },
    cost,
    fifoCost,
    counts,
    moveCount,
    ...(negative === undefined ? {} : { negative }),
  };
}
