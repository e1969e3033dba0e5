import { beforeAll, describe, expect, test } from 'vitest';
import { columnLetters } from '../../../shared/book/layout/ordersFormula.ts';
import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import { TABLES } from '../../../shared/book/tables.ts';
import type {
  BooksAnswer,
  ExportAnswer,
  MonthClosed,
} from '../../../shared/commands/booksCommands.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { openBench } from '../openBench.ts';
import type { DemoBook } from '../openDemoBook.ts';

let book: DemoBook;

/** One book for the tests of a part, in their order; its clock stands on 2026-12-01. */
function useBook(): void {
  const opened = openBench();
  beforeAll(() => {
    book = opened;
  });
}

const LAST = columnLetters(Object.keys(TABLES.orders.columns).length);

const CLOSED = TABLES.closedMonths;

function closedRows(): readonly (readonly unknown[])[] {
  return book.host
    .values(CLOSED.sheet, 'A2:L20')
    .filter((cells) => cells.some((cell) => cell !== ''));
}

async function good<Answer extends { readonly kind: string }>(asked: Promise<Answer>) {
  const answer = await asked;
  if (answer.kind !== 'ok') throw new Error(JSON.stringify(answer));
  return answer as Extract<Answer, { readonly kind: 'ok' }>; // told apart by its kind
}

/** Types into a cell of *Orders* by order and column. */
async function typeOrder(
  order: string,
  key: keyof typeof TABLES.orders.columns,
  text: string,
): Promise<void> {
  const [headings = [], ...rows] = book.host.values('Orders', `A1:${LAST}40`);
  const column = headings.indexOf(headingOf(TABLES.orders.columns[key], 'US'));
  const row = rows.findIndex(([first]) => first === order);
  book.host.type('Orders', `${columnLetters(column + 1)}${row + 2}`, text);
  await book.host.settled();
}

describe('closing a month', () => {
  useBook();

  test.each([
    [{ month: '2026-12' }, 'month', '2026-12 is not over: it can be closed from 2027-01-01 on'],
    [{ month: '2026-10' }, 'month', '2026-10 has no sales to close'],
    [{ month: 'soon' }, 'month', 'month must be a month such as 2026-11, got "soon"'],
    [{}, 'month', 'month must be given, got nothing'],
    [{ month: ['2026-11'] }, 'month', 'month must be text, got "a list or an object"'],
    [
      { month: '2026-11', who: 'A'.repeat(21) },
      'who',
      `who must be at most 20 characters long, got "${'A'.repeat(21)}"`,
    ],
    [
      { month: '2026-11', day: '2030-01-01' },
      'day',
      'day must be a field that this command knows, got "2030-01-01"',
    ],
  ])('refuses %j and writes nothing', async (payload, field, text) => {
    expect(await book.ask('closeMonth', payload)).toEqual({
      kind: 'refused',
      problems: [{ field, text }],
    });
    expect(closedRows()).toEqual([]);
  });

  test('by two people at once writes one row, and both are told', async () => {
    // While a third one writes, both wait, and read the book only then.
    const release = book.host.holdLock();
    setTimeout(release, 1500);
    const [one, other] = await Promise.all([
      good<MonthClosed | { kind: 'refused' }>(
        book.ask('closeMonth', { month: '2026-11', who: 'AK' }, { window: 'a' }),
      ),
      good<MonthClosed | { kind: 'refused' }>(
        book.ask('closeMonth', { month: '2026-11', who: 'BR' }, { window: 'b' }),
      ),
    ]);
    expect([one.closed, other.closed].sort()).toEqual(['before', 'now']);
    await book.host.settled();
    expect(closedRows()).toHaveLength(1);
    expect(closedRows()[0]?.slice(0, 2)).toEqual(['closed 2026-11', '2026-11']);
    const third = await good(book.ask('closeMonth', { month: '2026-11' }));
    expect(third.closed).toBe('before');
    expect(closedRows()).toHaveLength(1);
  });

  test('keeps the figures when an order is changed afterwards', async () => {
    const before = await good<BooksAnswer | { kind: 'refused' }>(book.ask('readBooks', {}));
    const rows = closedRows();
    await typeOrder('1003', 'priceAgreed', '268.75');
    const after = await good<BooksAnswer | { kind: 'refused' }>(book.ask('readBooks', {}));
    expect(closedRows()).toEqual(rows);
    const [was, is] = [before.months[0], after.months[0]];
    expect({ ...is, since: undefined }).toEqual({ ...was, since: undefined });
    // 13.75 more with its tenth inside: 12.50 and 1.25.
    expect(is?.since?.change).toMatchObject({ sales: 1250, exciseTax: 125 });
    expect(is?.since?.orders).toEqual(['1003']);
    expect(after.years[0]?.corrections.sales).toBe(1250);
  });
});

describe('closing months in their order', () => {
  useBook();

  test('waits for an earlier month with sales', async () => {
    await typeOrder('1001', 'shippedOn', '2026-10-30');
    expect(await book.ask('closeMonth', { month: '2026-11' })).toEqual({
      kind: 'refused',
      problems: [
        { field: 'month', text: '2026-10 has sales and is not closed yet: close it first' },
      ],
    });
    expect((await good(book.ask('closeMonth', { month: '2026-10' }))).next).toBe('2026-11');
    expect((await good(book.ask('closeMonth', { month: '2026-11' }))).next).toBeUndefined();
    expect(closedRows().map((row) => row[1])).toEqual(['2026-10', '2026-11']);
  });

  test('keeps initials and order numbers as text, whatever they look like', async () => {
    await typeOrder('1002', 'order', "'=1+1");
    await typeOrder('=1+1', 'shippedOn', '2026-09-30');
    await good(book.ask('closeMonth', { month: '2026-09', who: '=1+1' }));
    await book.host.settled();
    const row = closedRows().find(([, month]) => month === '2026-09');
    expect(row?.[3]).toBe('=1+1');
    const found = await good<BooksAnswer | { kind: 'refused' }>(book.ask('readBooks', {}));
    const [september] = found.months;
    expect(september).toMatchObject({ month: '2026-09', since: { who: '=1+1', orders: [] } });
  });

  test('a sheet Overview that somebody made is not overwritten', async () => {
    // The run sheet's tab stands in for a sheet that was named by hand.
    await book.ask('makeRunSheet', { order: '1006' });
    await book.host.settled();
    rename('Run sheet', 'Overview');
    expect(await book.ask('updateOverview', {})).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'The sheet Overview was not made by this add-on and would be overwritten: give it another name first.',
        },
      ],
    });
  });
});

describe('exports and overview', () => {
  useBook();

  test('sales, moves and excise hold every row with its figures', async () => {
    const sales = await good<ExportAnswer | { kind: 'refused' }>(
      book.ask('exportRows', { what: 'sales' }),
    );
    expect(sales.fileName).toBe('sales-2026-12-01');
    const at = (name: string) => sales.headings.indexOf(name);
    expect(
      sales.rows.map((row) => [row[at('Order')], row[at('Price agreed')], row[at('Net sales')]]),
    ).toEqual([
      ['1001', 240, 218.18],
      ['1002', 158, 158],
      ['1003', 255, 231.82],
    ]);
    const moves = await good(book.ask('exportRows', { what: 'stock moves' }));
    const typed = book.host.values('Stock moves', 'A2:A200').filter(([cell]) => cell !== '');
    expect(moves.rows).toHaveLength(typed.length);
    const tax = await good(book.ask('exportRows', { what: 'excise sales' }));
    expect(tax.rows.map((row) => [row[0], row[4], row[7]])).toEqual([
      ['1001', 'taxable', 21.82],
      ['1002', 'export', 0],
      ['1003', 'taxable', 23.18],
    ]);
    for (const row of tax.rows) expect(row.at(-1)).toContain('Ask a tax adviser.');
    for (const { headings, rows } of [sales, moves, tax])
      for (const row of rows) expect(row).toHaveLength(headings.length);
  });

  test.each(['everything', 'toString', ...HOSTILE])('there is none called %j', async (what) => {
    const answer = await book.ask('exportRows', { what });
    expect(answer).toMatchObject({ kind: 'refused', problems: [{ field: 'what' }] });
  });

  const texts = () => book.host.texts('Overview', 'A:H');
  const charts = () =>
    book.host.snapshot().values.find(({ id }) => id === 'workbench.charts')?.params;

  test('the overview shows orders due, sales, excise, what is owed, stock, yields and quality, with charts over their cells', async () => {
    expect(await book.ask('updateOverview', {})).toEqual({ kind: 'ok', sheet: 'Overview' });
    await book.host.settled();
    expect(book.host.sheets()[0]).toBe('Overview');
    const lines = texts().map((cells) => cells.filter((cell) => cell !== '').join(' | '));
    expect(lines[0]).toBe('Overview: Demo shop (invented)');
    for (const line of [
      'Orders due in the next 14 days',
      '1004 | 2026-11-20 | Customer 131 | Split minnow 4 in | River stone | packed | late | 54',
      'The week ahead',
      'Day | Hours there | Hours planned | Share planned | Rounds | Packed',
      'Month | State | Orders | Sales | Cost of goods | Margin | Margin share | Stock lost',
      'Quarter | Return due | Sales | All sales | Taxed sales | Taxed on | Tax | Adjustments',
      '2026 Q4 | 2027-01-31 | 3 | 653.00 | 495.00 | 450.00 | 45.00 | 0.00',
      'Order 1002 is overpaid by $4.00.',
      'Month | Poured | Good | Good share',
      'Quality this week: Nothing logged this week',
      'Week of | Rounds | Poured | Good | Good share | At least | At most',
      'Signals, the newest first',
      'Worst three of the last 8 weeks',
      'Round | Share bad | Center | Lower limit | Upper limit | Signal',
      'R-1005 round 1 | 50.0% | 11.9% | 0.0% | 46.3% | beyond its limit',
      'Defect | Pieces | Share | Summed',
    ])
      expect(lines).toContain(line);
    const words = lines.join(' ');
    expect(words).toContain('26 USC 4161(a) (copy checked 2026-06-20)');
    expect(words).toContain('Ask a tax adviser.');
    expect(words).not.toMatch(/NaN|undefined|Infinity/);
    expect(charts()).toMatchObject([
      { title: 'Hours of the week ahead', headers: 1 },
      { title: 'Sales and margin by month, USD', headers: 1 },
      { title: 'Excise by quarter, USD', headers: 1 },
      { title: 'Share of bad pieces', kind: 'lines', headers: 1 },
      { title: 'Bad pieces by what was wrong', headers: 1 },
      { title: 'Yield against mold top', kind: 'lines', headers: 1 },
      { title: 'Piece weight, Round stick 5 in', kind: 'lines', headers: 1 },
    ]);
    expect(chartTexts().slice(1, 3)).toEqual([
      [
        ['Month', '2026-11'],
        ['Sales', '608.00'],
        ['Margin', expect.stringMatching(/^\d+\.\d\d$/)],
      ],
      [
        ['Quarter', '2026 Q4'],
        ['Tax', '45.00'],
      ],
    ]);
  });

  /** What stands in the ranges of each chart. */
  function chartTexts(): readonly unknown[] {
    const list = charts() as readonly {
      readonly ranges: readonly { readonly box: Record<string, number> }[];
    }[]; // as the host's contract says
    return list.map(({ ranges }) =>
      ranges.map(({ box }) => {
        const letter = columnLetters((box['startColumn'] ?? 0) + 1);
        const cells = `${letter}${(box['startRow'] ?? 0) + 1}:${letter}${(box['endRow'] ?? 0) + 1}`;
        return book.host.texts('Overview', cells).flat();
      }),
    );
  }

  test('the overview written again is the same, and leaves every other sheet alone', async () => {
    await book.ask('updateOverview', {});
    await book.host.settled();
    const sheets = book.host.sheets();
    const before = { texts: texts(), orders: book.host.values('Orders', 'A1:Z20') };
    book.host.type('Overview', 'A5', 'a note of somebody');
    await book.ask('updateOverview', {});
    await book.host.settled();
    expect(texts()).toEqual(before.texts);
    expect(book.host.values('Orders', 'A1:Z20')).toEqual(before.orders);
    expect(book.host.sheets()).toEqual(sheets);
    expect(charts()).toHaveLength(7);
  });

  test('the overview keeps texts as texts', async () => {
    await typeOrder('1007', 'customer', "'=1+1");
    await book.ask('updateOverview', {});
    await book.host.settled();
    expect(book.host.values('Overview', 'A:H').flat()).toContain('=1+1');
  });
});

/** Renames a sheet as a window does. */
function rename(from: string, to: string): void {
  const { host } = book;
  const { workbook, sequence } = host.snapshot();
  const { sheets } = workbook as { sheets: Record<string, { id: string; name: string }> }; // Univer's workbook data
  const sheet = Object.values(sheets).find(({ name }) => name === from);
  const params = { subUnitId: sheet?.id, name: to };
  const id = 'sheet.mutation.set-worksheet-name';
  expect(host.apply({ madeAt: sequence, id, params, origin: 'a' })).toMatchObject({
    kind: 'applied',
  });
}
