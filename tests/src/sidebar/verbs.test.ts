import { describe, expect, onTestFinished, test } from 'vitest';
import { columnLetters } from '../../../shared/book/layout/ordersFormula.ts';
import { TABLES } from '../../../shared/book/tables.ts';
import { openBench } from '../openBench.ts';

const book = openBench();

/** The pour log of the demo shop ends in row 61; order 1007 wants 60 good pieces of two layers. */
const ENTRY = {
  order: '1007',
  token: 'token-1',
  values: {
    run: '1007-1',
    who: 'AK',
    moldTop: '214',
    pour1: '327',
    pour2: '330',
    gap12: '2.5',
    poured: '12',
    good: '11',
    coldCrack: '1',
    tearTest: 'tears through',
    pieceWeight: '0.31',
    notes: '',
  },
};

function entry(token: string, values: Readonly<Record<string, string>> = {}) {
  return { ...ENTRY, token, values: { ...ENTRY.values, ...values } };
}

/** Cells of one row of a table by their headings. */
function rowOf(key: 'orders' | 'pourLog', row: number): Readonly<Record<string, unknown>> {
  const { sheet, columns } = TABLES[key];
  const last = columnLetters(Object.keys(columns).length);
  const [headings = []] = book.host.values(sheet, `A1:${last}1`);
  const [cells = []] = book.host.values(sheet, `A${row}:${last}${row}`);
  return Object.fromEntries(headings.map((heading, index) => [String(heading), cells[index]]));
}

/** Types into cells, and puts back what stood there when the test is over. */
async function typeFor(sheet: string, cells: Readonly<Record<string, string>>): Promise<void> {
  const before = Object.keys(cells).map(
    (cell) => [cell, book.host.texts(sheet, cell)[0]?.[0] ?? ''] as const,
  );
  for (const [cell, text] of Object.entries(cells)) book.host.type(sheet, cell, text);
  await book.host.settled();
  onTestFinished(async () => {
    for (const [cell, text] of before) book.host.type(sheet, cell, text);
    await book.host.settled();
  });
}

describe('planSelectedOrder', () => {
  test('plans the row of the current cell, and the order shown at another pour time', async () => {
    const answer = await book.ask('planSelectedOrder', {}, { range: 'C8' });
    expect(answer).toMatchObject({
      kind: 'ok',
      plan: { kind: 'plan', order: '1007', row: 8, firstPour: 795 },
    });
    const later = await book.ask(
      'planSelectedOrder',
      { order: '1007', firstPour: '14:15' },
      { range: 'A2' },
    );
    expect(later).toMatchObject({ plan: { order: '1007', firstPour: 855 } });
  });

  test('a plan is the same as the computed columns of its row', async () => {
    const answer = await book.ask('planSelectedOrder', {}, { range: 'A8' });
    const row = rowOf('orders', 8);
    expect(answer).toMatchObject({
      plan: { pieces: { toPour: row['Pieces to pour'], rounds: row['Rounds'] }, cups: row['Cups'] },
    });
  });

  test.each([
    {
      from: { sheet: 'Molds', range: 'A3' },
      payload: {},
      problem: { field: '', text: 'Select a row on the sheet Orders first.' },
    },
    {
      from: { range: 'D1' },
      payload: {},
      problem: {
        field: '',
        text: 'The heading row is selected: select a row that holds an order.',
      },
    },
    {
      from: { range: 'A90' },
      payload: {},
      problem: { field: '', text: 'Row 90 of Orders is blank: select a row that holds an order.' },
    },
    {
      from: { range: 'A8' },
      payload: { firstPour: 'noon' },
      problem: {
        field: 'firstPour',
        text: 'first pour must be a time such as 9:30 or 1:15 pm, got "noon"',
      },
    },
    {
      from: { range: 'A8' },
      payload: { order: 8 },
      problem: { field: 'order', text: 'order must be text, got 8' },
    },
    {
      from: { range: 'A8' },
      payload: { order: '8' },
      problem: { field: 'order', text: 'order must be listed in Orders, got "8"' },
    },
  ])('refuses $payload from $from in plain words', async ({ from, payload, problem }) => {
    expect(await book.ask('planSelectedOrder', payload, from)).toEqual({
      kind: 'refused',
      problems: [problem],
    });
  });

  test('names what a row lacks, and where', async () => {
    await typeFor('Orders', { E8: 'Wedge tail 9 in' });
    const answer = await book.ask('planSelectedOrder', {}, { range: 'A8' });
    expect(answer).toMatchObject({
      kind: 'ok',
      plan: {
        kind: 'missing',
        missing: [
          {
            sheet: 'Orders',
            row: 8,
            heading: 'Mold',
            text: 'mold must be listed in Molds, got "Wedge tail 9 in"',
          },
        ],
      },
    });
  });
});

describe('makeRunSheet', () => {
  test('lays the sheet out under the next run id, shows it, moves the order on', async () => {
    const made = await book.ask('makeRunSheet', { order: '1009' });
    expect(made).toEqual({ kind: 'ok', runId: '1009-1', status: 'planned' });
    expect(rowOf('orders', 10)).toMatchObject({ Order: '1009', Status: 'planned' });
    expect(book.host.values('Run sheet', 'A1:L40').flat()).toContain('1009-1');
    expect(book.shown.at(-1)).toMatchObject({ kind: 'activate', sheet: 'Run sheet' });
  });

  test('leaves the status of an order that is further on', async () => {
    expect(await book.ask('makeRunSheet', { order: '1006' })).toMatchObject({
      runId: '1006-2',
      status: 'poured',
    });
    expect(rowOf('orders', 7)).toMatchObject({ Status: 'poured' });
  });

  test('makes nothing of a row that lacks something', async () => {
    await typeFor('Orders', { H11: '' });
    const before = book.host.texts('Run sheet', 'A1:L10');
    expect(await book.ask('makeRunSheet', { order: '1010' })).toEqual({
      kind: 'refused',
      problems: [{ field: '', text: 'In Orders, row 11: quantity must be given, got nothing' }],
    });
    expect(book.host.texts('Run sheet', 'A1:L10')).toEqual(before);
    expect(rowOf('orders', 11)).toMatchObject({ Order: '1010', Status: 'accepted' });
  });
});

describe('printRunSheet', () => {
  test('opens the dialog, whose request holds nothing that HTML could read', async () => {
    const hostile = '1009"><script>alert(1)</script>';
    const request = { order: '1009', runId: hostile, firstPour: '10:00' };
    expect(await book.ask('printRunSheet', request)).toEqual({ kind: 'ok', runId: hostile });
    const dialog = book.shown.at(-1);
    const html = dialog?.kind === 'dialog' ? dialog.html : '';
    const encoded = /data-request="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(JSON.parse(decodeURIComponent(encoded))).toEqual(request);
    expect(html).not.toContain('alert(1)</script>');
  });

  test('the dialog gets the document of that order, run and pour time', async () => {
    const answer = await book.ask('runSheetDocumentFor', {
      order: '1009',
      runId: '1009-1',
      firstPour: '10:00',
    });
    const words = JSON.stringify(answer);
    expect(answer.kind).toBe('ok');
    for (const word of ['1009-1', 'River stone', '10:00 am', '2026-12-04'])
      expect(words).toContain(word);
  });
});

describe('startLog', () => {
  test('gives the layers, the runs and a token of its own to each form', async () => {
    const first = await book.ask('startLog', { order: '1007' });
    const second = await book.ask('startLog', { order: '1007' });
    expect(first).toMatchObject({
      kind: 'ok',
      layers: ['belly', 'back'],
      system: 'US',
      quantity: 60,
      good: 0,
      runs: [{ run: '1007-1', rounds: 0 }],
    });
    expect(first).not.toEqual(second);
  });

  test('offers the run whose sheet was made last first', async () => {
    await book.ask('makeRunSheet', { order: '1006' });
    expect(await book.ask('startLog', { order: '1006' })).toMatchObject({
      runs: [{ run: '1006-2', rounds: 0 }, { run: 'R-1006' }],
    });
  });
});

/** Rows that the log holds, its heading included. */
function logLength(): number {
  return book.host.values('Pour log', 'A1:A200').filter(([cell]) => cell !== '').length;
}

describe('logOutcome', () => {
  test('writes one row, in the units of the headings, and says what changes', async () => {
    await typeFor('Pour log', { I1: 'Mold top (°C)' });
    const before = rowOf('orders', 8)['Pieces to pour'];
    const logged = await book.ask('logOutcome', ENTRY);
    expect(logged).toMatchObject({
      kind: 'ok',
      logged: 'now',
      row: 63,
      run: '1007-1',
      good: 11,
      quantity: 60,
      status: 'planned',
    });
    await book.host.settled();
    expect(rowOf('pourLog', 63)).toMatchObject({
      Run: '1007-1',
      Entry: 'token-1',
      'Logged at': '2026-12-01 13:00',
      Order: '1007',
      Mold: 'Wedge tail 4.5 in',
      Pattern: 'Moss over sand',
      Version: 1,
      Who: 'AK',
      // 214 °F is 101.11 °C by hand; the heading above asks for it
      'Mold top (°C)': expect.toBeNear(101.1111111, { relative: 1e-8 }),
      'Pour 1 (°F)': 327,
      'Gap 1-2 (min)': 2.5,
      Poured: 12,
      Good: 11,
      'Cold crack': 1,
      Flash: 0,
      'Tear test': 'tears through',
      'Piece weight (oz)': 0.31,
      Notes: '',
    });
    const after = rowOf('orders', 8)['Pieces to pour'];
    expect(after).not.toBe(before);
    const own = { order: '1007', quantity: 60, before, after };
    expect(logged).toMatchObject({ changes: [own] });
  });

  test('a double click and a retry log once', async () => {
    const before = logLength();
    const sent = entry('token-double');
    const both = await Promise.all([book.ask('logOutcome', sent), book.ask('logOutcome', sent)]);
    expect(both).toMatchObject([{ logged: 'now' }, { logged: 'before' }]);
    const changed = entry('token-double', { good: '12', coldCrack: '' });
    const row = before + 1;
    expect(await book.ask('logOutcome', changed)).toMatchObject({ logged: 'before', row });
    await book.host.settled();
    expect(logLength()).toBe(row);
    expect(rowOf('pourLog', row)).toMatchObject({ Entry: 'token-double', Good: 11 });
  });

  test('two people who log the same run both keep their rows', async () => {
    const before = logLength();
    await Promise.all([
      book.ask('logOutcome', entry('token-a'), { window: 'a' }),
      book.ask('logOutcome', entry('token-b', { who: 'BR', good: '10' }), { window: 'b' }),
    ]);
    await book.host.settled();
    expect(rowOf('pourLog', before + 1)).toMatchObject({ Run: '1007-1', Who: 'AK', Good: 11 });
    expect(rowOf('pourLog', before + 2)).toMatchObject({ Run: '1007-1', Who: 'BR', Good: 10 });
  });

  test.each(['=IMPORTXML("http://example.test","//a")', '+1', "'=1", '<b onclick=alert(1)>'])(
    'keeps %s as text',
    async (hostile) => {
      const [run, who] = [hostile.slice(0, 40), hostile.slice(0, 20)];
      const sent = entry(hostile, { run, who, notes: hostile, poured: '1', good: '0' });
      const row = logLength() + 1;
      expect(await book.ask('logOutcome', sent)).toMatchObject({ kind: 'ok', row });
      await book.host.settled();
      const kept = { Run: run, Entry: hostile, Who: who, Notes: hostile };
      expect(rowOf('pourLog', row)).toMatchObject(kept);
    },
  );

  test('gives all messages at once and writes nothing', async () => {
    const before = logLength();
    const wrong = { who: '', moldTop: '33', pour1: '33', good: '13', tearTest: '' };
    expect(await book.ask('logOutcome', entry('token-wrong', wrong))).toEqual({
      kind: 'refused',
      problems: [
        { field: 'who', text: 'who must be given, got nothing' },
        { field: 'moldTop', text: 'mold top must be at least 41 °F, got 33 °F' },
        { field: 'pour1', text: 'pour 1 must be at least 212 °F, got 33 °F' },
        { field: 'tearTest', text: 'tear test must be given, got nothing' },
        { field: 'good', text: 'good must be at most poured (12), got 13' },
      ],
    });
    expect(logLength()).toBe(before);
  });

  test.each([
    { field: 'entry', values: { entry: 'x' } },
    { field: 'notes', values: { notes: 'x'.repeat(2001) } },
    { field: 'good', values: { good: 11 } },
  ])('refuses a page that sends $field otherwise than the form does', async ({ field, values }) => {
    const before = logLength();
    const sent = { ...ENTRY, token: 'token-odd', values: { ...ENTRY.values, ...values } };
    expect(await book.ask('logOutcome', sent)).toMatchObject({
      kind: 'refused',
      problems: [{ field }],
    });
    expect(logLength()).toBe(before);
  });

  test('does not mix the runs of two orders', async () => {
    const sent = { ...entry('token-run', { run: 'R-1006' }) };
    expect(await book.ask('logOutcome', sent)).toMatchObject({
      problems: [
        {
          field: 'run',
          text: 'run must be a run of order 1007, got "R-1006", which is logged for order 1006',
        },
      ],
    });
  });

  test('moves the order on by its number once the pieces are there, though its row moved', async () => {
    // Order 1012 changes places with 1002 above it.
    const own = { E3: 'Wedge tail 4.5 in', F3: 'Night glass', G3: '', H3: '20', N3: 'planned' };
    await typeFor('Orders', { A13: '1002', A3: '1012', ...own });
    const values = { run: '1012-1', pour3: '330', gap23: '2' };
    const first = { ...entry('token-half', values), order: '1012' };
    expect(await book.ask('logOutcome', first)).toMatchObject({ good: 11, status: 'planned' });
    const second = { ...entry('token-whole', values), order: '1012' };
    expect(await book.ask('logOutcome', second)).toMatchObject({ good: 22, status: 'poured' });
    expect(rowOf('orders', 3)).toMatchObject({ Order: '1012', Status: 'poured' });
    expect(rowOf('orders', 13)).toMatchObject({ Order: '1002', Status: 'asked' });
  });

  test('refuses a log that lacks a column, since what was typed for it would be lost', async () => {
    await typeFor('Pour log', { V1: 'Something else' });
    expect(await book.ask('logOutcome', entry('token-column'))).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'Pour log lacks a readable column for Peeled layer: choose Poursmith > Set up this workbook.',
        },
      ],
    });
  });

  test('grows the sheet when its last row is full', async () => {
    await typeFor('Pour log', { A200: 'old' });
    expect(await book.ask('logOutcome', entry('token-201'))).toMatchObject({ row: 201 });
    expect(await book.ask('logOutcome', entry('token-202'))).toMatchObject({ row: 202 });
  });
});

describe('menu', () => {
  test('offers what there is, and each item runs a function that exists', async () => {
    const [menu] = book.host.menus();
    expect(menu?.title).toBe('Poursmith');
    const items = menu?.items.filter(({ run }) => run !== undefined) ?? [];
    expect(items.map(({ label }) => label)).toEqual([
      'Open the bench panel',
      'Update the overview',
      'Set up this workbook',
      'Fill with the demo shop',
      'Recalculate',
      'About and cautions',
    ]);
    for (const { run = '' } of items)
      expect(await book.call(run, undefined)).toMatchObject({ kind: 'value' });
    expect(book.shown).toContainEqual(
      expect.objectContaining({ kind: 'sidebar', title: 'Poursmith bench' }),
    );
  });

  test('recalculating leaves every formula and its answer as it was', async () => {
    const before = book.host.texts('Orders', 'A1:AJ13');
    expect(await book.call('recalculate', undefined)).toEqual({ kind: 'value', value: 12 });
    await book.host.settled();
    expect(book.host.texts('Orders', 'A1:AJ13')).toEqual(before);
  });
});
