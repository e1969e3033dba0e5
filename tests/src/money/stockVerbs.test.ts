import { describe, expect, onTestFinished, test } from 'vitest';
import { columnLetters } from '../../../shared/book/layout/ordersFormula.ts';
import { TABLES } from '../../../shared/book/tables.ts';
import { openHost } from '../../../workbench/host/openHost.ts';
import { fillBook } from '../../../workbench/server/fillBook.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { openBench } from '../openBench.ts';

const book = openBench();

const { sheet, columns } = TABLES.stockMoves;
const LAST = columnLetters(Object.keys(columns).length);

/** Filled rows of *Stock moves* as records by heading, the first is row 2. */
function moves(): readonly Readonly<Record<string, unknown>>[] {
  const [headings = [], ...rows] = book.host.values(sheet, `A1:${LAST}200`);
  return rows
    .filter((cells) => cells.some((cell) => cell !== ''))
    .map((cells) =>
      Object.fromEntries(headings.map((name, index) => [String(name), cells[index]])),
    );
}

async function typeRow(cells: readonly string[]): Promise<number> {
  const row = moves().length + 2;
  cells.forEach((text, index) => {
    book.host.type(sheet, `${columnLetters(index + 1)}${row}`, text);
  });
  await book.host.settled();
  return row;
}

describe('postUse', () => {
  test('writes what a logged run takes, as planned or as weighed, with day, run, order and token', async () => {
    const form = await book.ask('startUse', { order: '1005', run: 'R-1005' });
    expect(form).toMatchObject({ kind: 'ok', order: '1005', run: 'R-1005', poured: 64 });
    const before = moves().length;
    const payload = {
      order: '1005',
      run: 'R-1005',
      amounts: { blue: '0.02' },
      scrapped: { black: '0.5' },
    };
    const posted = await book.ask('postUse', payload);
    expect(posted).toMatchObject({ kind: 'ok', posted: 'now', negative: [] });
    await book.host.settled();
    const added = moves().slice(before);
    expect(added.map((row) => [row['Material'], row['Reason']])).toEqual([
      ['Blue', 'used'],
      ['Fine silver glitter', 'used'],
      ['Black', 'used'],
      ['Black', 'scrapped'],
      ['Zip bag, 4 x 6 in', 'used'],
      ['Bag label', 'used'],
    ]);
    expect(added[0]).toMatchObject({
      Material: 'Blue',
      Lot: 'C-0113',
      Amount: -0.02,
      Order: '1005',
      Run: 'R-1005',
      Money: '',
      Entry: 'used | r-1005 | blue | c-0113',
    });
    // 2026-12-01 at 20:00 in universal time is the same day in Denver.
    expect(JSON.stringify(added[0])).toContain('2026-12-01T');
    expect(added[3]).toMatchObject({ Amount: -0.5, Entry: 'scrapped | r-1005 | black | c-0117' });
    expect(posted).toMatchObject({ rows: added.map((_row, index) => before + 2 + index) });
  });

  test('posted again changes nothing and says so, with other amounts too', async () => {
    const payload = { order: '1004', run: 'R-1004' };
    const before = moves().length;
    // While somebody else writes it waits, and reads the book only then.
    const release = book.host.holdLock();
    const waiting = book.ask('postUse', payload);
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(moves().length).toBe(before);
    release();
    expect(await waiting).toMatchObject({ posted: 'now' });
    await book.host.settled();
    expect(moves().length).toBeGreaterThan(before);
    const once = moves();
    for (const again of [payload, payload, { ...payload, amounts: { white: '3' } }])
      expect(await book.ask('postUse', again)).toMatchObject({
        kind: 'ok',
        posted: 'before',
        rows: [],
      });
    await book.host.settled();
    expect(moves()).toEqual(once);
    const form = await book.ask('startUse', payload);
    expect(form.kind === 'ok' && form.lines.every((line) => line.used !== undefined)).toBe(true);
  });

  test('two people who post the same run at once post it once', async () => {
    const before = moves().length;
    const payload = { order: '1003', run: 'R-1003' };
    const both = await Promise.all([
      book.ask('postUse', payload, { window: 'a' }),
      book.ask('postUse', payload, { window: 'b' }),
    ]);
    const kinds = both.map((answer) => (answer.kind === 'ok' ? answer.posted : answer.kind));
    expect([...kinds].sort()).toEqual(['before', 'now']);
    await book.host.settled();
    const entries = moves()
      .map((row) => row['Entry'])
      .filter((entry) => entry !== '');
    expect(new Set(entries).size).toBe(entries.length);
    const now = both.find((answer) => answer.kind === 'ok' && answer.posted === 'now');
    expect(moves().length - before).toBe(now?.kind === 'ok' ? now.rows.length : 0);
  });

  test('two people who post different runs at once both keep their rows', async () => {
    const before = moves().length;
    const answers = await Promise.all([
      book.ask('postUse', { order: '1001', run: 'R-1001' }, { window: 'a' }),
      book.ask('postUse', { order: '1002', run: 'R-1002' }, { window: 'b' }),
    ]);
    await book.host.settled();
    const written = answers.flatMap((answer) => (answer.kind === 'ok' ? answer.rows : []));
    expect(new Set(written).size).toBe(written.length);
    expect(moves().length).toBe(before + written.length);
    const runs = moves()
      .slice(before)
      .map((row) => row['Run']);
    expect(new Set(runs)).toEqual(new Set(['R-1001', 'R-1002']));
  });

  test('takes a stock below nothing, names the row and by how much', async () => {
    // Another stock that is below nothing already is no matter of this run.
    const other = await typeRow(['2026-11-30', 'Green', '', '-9', 'used']);
    const payload = { order: '1006', run: 'R-1006', amounts: { red: '4.5' } };
    const posted = await book.ask('postUse', payload);
    if (posted.kind !== 'ok') throw new Error(JSON.stringify(posted));
    await book.host.settled();
    const row = moves().findIndex((one) => one['Amount'] === -4.5) + 2;
    const left = posted.negative.length;
    expect(left).toBe(1);
    expect(posted.negative[0]).toMatch(
      new RegExp(
        `^row ${row}: this move of 2026-12-01 takes Red to -0\\.5\\d* fl oz: a purchase or a count is missing before it, or its amount is wrong$`,
      ),
    );
    const stock = await book.ask('readStock', {});
    expect(stock).toMatchObject({ kind: 'ok', problems: [{ row: other }, { row }] });
    const red = stock.kind === 'ok' && stock.lines.find(({ material }) => material === 'Red');
    expect(red).toMatchObject({ negative: { row, date: '2026-12-01' } });
    expect(JSON.stringify(stock)).not.toMatch(/null|NaN/);
    // The purchase that was missing, typed afterwards with its own day, settles it.
    await typeRow(['2026-12-01', 'Red', 'C-0130', '4', 'purchase', '', '', '9.5']);
    expect(await book.ask('readStock', {})).toMatchObject({ problems: [{ row: other }, { row }] });
  });

  test.each([
    { payload: undefined, field: 'order', text: 'order must be given, got nothing' },
    { payload: 7, field: 'order', text: 'order must be given, got nothing' },
    { payload: { order: '1006' }, field: 'run', text: 'run must be given, got nothing' },
    {
      payload: { order: '9', run: '9-1' },
      field: 'order',
      text: 'order must be listed in Orders, got "9"',
    },
    {
      payload: { order: '1007', run: '1007-1' },
      field: '',
      text: 'no pieces of run 1007-1 are in Pour log: log them first',
    },
    {
      payload: { order: '1006', run: 'R-1005' },
      field: '',
      text: 'no pieces of run R-1005 are in Pour log: log them first',
    },
    {
      payload: { order: '1006', run: 'R-1006', amounts: { white: 3 } },
      field: 'white',
      text: 'white must be text, got 3',
    },
    {
      payload: { order: '1006', run: 'R-1006', amounts: { gold: '3' } },
      field: '',
      text: 'material must be a material that run R-1006 takes, got "gold"',
    },
    {
      payload: { order: '1006', run: 'R-1006', more: 'x' },
      field: 'more',
      text: 'more must be a field that this command knows, got "x"',
    },
  ])('refuses $payload in plain words', async ({ payload, field, text }) => {
    const before = moves().length;
    const answer = await book.ask('postUse', payload);
    expect(answer).toMatchObject({ kind: 'refused' });
    expect(answer.kind === 'refused' && answer.problems[0]).toEqual({ field, text });
    expect(moves().length).toBe(before);
  });

  test.each(HOSTILE)('%j in the sheets stays text', async (text) => {
    const row = await typeRow(['2026-11-30', '', '', '1', 'used']);
    // Typed with the text mark, as a careful user would have to.
    book.host.type(sheet, `B${row}`, `'${text}`);
    book.host.type(sheet, `C${row}`, `'${text}`);
    await book.host.settled();
    const trace = await book.ask('traceLot', { name: text.slice(0, 60) });
    expect(trace.kind).toBe('ok');
    const stock = await book.ask('readStock', {});
    expect(stock.kind).toBe('ok');
    for (const column of 'ABCDEFGHIJ') book.host.type(sheet, `${column}${row}`, '');
    await book.host.settled();
  });
});

describe('readStock and the purchase list', () => {
  test('show the demo shop’s short material, and what it costs to buy', async () => {
    const stock = await book.ask('readStock', {});
    if (stock.kind !== 'ok') throw new Error('refused');
    expect(stock.purchases.lines[0]).toMatchObject({
      material: 'Plastisol soft',
      packs: 2,
      money: 12_400,
    });
    const list = await book.ask('purchasesFor', {});
    expect(list).toMatchObject({
      kind: 'ok',
      shopName: 'Demo shop (invented)',
      date: '2026-12-01',
      currency: 'USD',
      purchases: stock.purchases,
    });
    expect(await book.ask('showPurchases', {})).toEqual({ kind: 'ok' });
    expect(book.shown.at(-1)).toMatchObject({ kind: 'dialog', title: 'Purchase list' });
  });

  test('a lot is found both ways', async () => {
    const trace = await book.ask('traceLot', { name: 'pm-2611' });
    const orders = trace.kind === 'ok' ? trace.ofLot.map(({ order }) => order) : [];
    expect(orders).toContain('1006');
    expect(await book.ask('traceLot', { name: '1006' })).toMatchObject({
      ofOrder: expect.arrayContaining([expect.objectContaining({ lot: 'PM-2611' })]),
    });
    expect(await book.ask('traceLot', {})).toEqual({
      kind: 'refused',
      problems: [{ field: 'name', text: 'name must be given, got nothing' }],
    });
  });
});

test('days in cells are those of a workbook east of Greenwich too', async () => {
  const east = await openHost({ dist: 'dist', timeZone: 'Europe/Berlin' });
  onTestFinished(() => east.close());
  await fillBook(east, 'demo', () => {});
  const formula = '=POUR_LOTS("pm-2611", \'Stock moves\'!A1:K, Materials!A1:Q)';
  east.type('Sheet1', 'A1', formula);
  await east.settled();
  expect(east.values('Sheet1', 'H2')).toEqual([['2026-11-09']]);
}, 60_000);

describe('the stock functions in cells', () => {
  test('read the days of the workbook’s own zone, and agree with the panel', async () => {
    const ask = async (cell: string, formula: string) => {
      book.host.type('Sheet1', cell, formula);
      await book.host.settled();
    };
    await ask('P1', '=POUR_STOCK("lots", \'Stock moves\'!A1:K, Materials!A1:Q, Shop!A1:C)');
    const lots = book.host.values('Sheet1', 'P1:U3');
    expect(lots[1]?.slice(0, 3)).toEqual(['Plastisol medium', 'PM-2610', '2026-10-19']);
    await ask('P1', '');
    await ask('P1', '=POUR_LOTS("pm-2611", \'Stock moves\'!A1:K, Materials!A1:Q)');
    expect(book.host.values('Sheet1', 'P2:Y2')[0]?.slice(1, 9)).toEqual([
      'PM-2611',
      '',
      '',
      'purchase',
      2,
      'gal',
      '2026-11-09',
      30,
    ]);
    await ask('P1', '');
  });
});
