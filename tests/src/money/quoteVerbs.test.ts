import { describe, expect, test } from 'vitest';
import { columnLetters } from '../../../shared/book/layout/ordersFormula.ts';
import { ORDERS } from '../../../shared/book/tables/orders.ts';
import { QUOTES } from '../../../shared/book/tables/quotes.ts';
import type { AnswerOf, PayloadOf } from '../../../shared/commands/commandTypes.ts';
import type { QuoteValues } from '../../../shared/money/quote/quoteFieldTypes.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { openBench } from '../openBench.ts';

/** On 2026-12-01. Orders end in row 13 with order 1012, which is asked for. */
const book = openBench();

const ASKED: QuoteValues = Object.freeze({
  customer: 'Customer 150',
  mold: 'Round stick 5 in',
  pattern: 'Dusk line',
  quantity: '50',
  due: '2026-12-20',
  by: 'price of a piece',
  aim: '2.1',
  shipping: '9.5',
});

type Good<Answer> = Extract<Answer, { readonly kind: 'ok' }>;

async function make(payload: PayloadOf<'makeQuote'>): Promise<Good<AnswerOf<'makeQuote'>>> {
  const answer = await book.ask('makeQuote', payload);
  if (answer.kind === 'refused') throw new Error(JSON.stringify(answer.problems));
  return answer;
}

/** Cells of a row by their headings, typed columns only where it is Orders. */
function rowOf(table: typeof ORDERS | typeof QUOTES, row: number): Record<string, unknown> {
  const typed = Object.values<{ kind: string; heading: string }>(table.columns).filter(
    ({ kind }) => kind !== 'computed',
  );
  const last = columnLetters(typed.length);
  const [headings = []] = book.host.values(table.sheet, `A1:${last}1`);
  const [cells = []] = book.host.values(table.sheet, `A${row}:${last}${row}`);
  return Object.fromEntries(headings.map((heading, index) => [String(heading), cells[index]]));
}

function filledRows(sheet: 'Orders' | 'Quotes'): number {
  return book.host.values(sheet, 'A1:A200').filter(([cell]) => cell !== '' && cell !== null).length;
}

function day(cell: unknown): string {
  return cell instanceof Date ? cell.toISOString().slice(0, 10) : String(cell);
}

async function typeInto(sheet: string, cell: string, text: string): Promise<void> {
  book.host.type(sheet, cell, text);
  await book.host.settled();
}

describe('startQuote', () => {
  test('opens blank with the choices of the book, for an order taker with no row', async () => {
    const form = await book.ask('startQuote', {}, { sheet: 'Molds', range: 'A2' });
    expect(form).toMatchObject({
      kind: 'ok',
      order: '',
      currency: 'USD',
      values: { by: 'target margin', aim: '45' },
      missing: [],
    });
    if (form.kind === 'refused') return;
    expect(form.choices.molds).toContain('Round stick 5 in');
    expect(form.choices.patterns).toContain('Dusk line');
    expect(form.facts).toBeUndefined();
    const other = await book.ask('startQuote', {});
    expect(other.kind === 'ok' && other.token).not.toBe(form.token);
  });

  test('opens the selected row with its terms and what it costs', async () => {
    const form = await book.ask('startQuote', { from: 'selected' }, { range: 'C13' });
    expect(form).toMatchObject({
      order: '1012',
      values: { rush: 'rush', discount: '', shipping: '9.5', saleKind: 'retail', exciseStatus: '' },
      facts: { order: '1012', mold: 'Wedge tail 4.5 in', quantity: 50 },
    });
  });

  test('says of an accepted order what was agreed, and that it is not quoted anew', async () => {
    const form = await book.ask('startQuote', { order: '1009' });
    expect(form).toMatchObject({
      accepted: { on: '2026-11-23', price: 14400 },
      notQuotable:
        'Order 1009 was accepted on 2026-11-23 at its price agreed: clear Accepted on and Price agreed in Orders to quote it anew.',
      quoted: { quote: 'Q-1009' },
    });
  });

  test.each([
    [{ order: 'nobody' }, {}, 'order must be listed in Orders, got "nobody"'],
    [{ from: 'selected' }, { sheet: 'Molds' }, 'Select a row on the sheet Orders first.'],
    [
      { from: 'selected' },
      { range: 'A1' },
      'The heading row is selected: select a row that holds an order.',
    ],
  ] as const)('%j is refused in a sentence', async (payload, from, text) => {
    const answer = await book.ask('startQuote', payload, from);
    expect(answer).toMatchObject({ kind: 'refused', problems: [{ text }] });
  });
});

describe('quoteFor', () => {
  test('prices what is typed without a row and writes nothing', async () => {
    const before = filledRows('Orders');
    const answer = await book.ask('quoteFor', { values: ASKED });
    expect(answer).toMatchObject({
      kind: 'ok',
      facts: { mold: 'Round stick 5 in', version: 2, quantity: 50, due: '2026-12-20' },
    });
    if (answer.kind === 'refused') return;
    const { cost, quantities } = answer.facts;
    expect(cost.lines.reduce((sum, { minor }) => sum + minor, 0)).toBe(cost.total);
    expect(quantities.map(({ quantity }) => quantity)).toEqual([25, 50, 100, 250]);
    expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined/);
    expect(filledRows('Orders')).toBe(before);
  });

  test.each([
    [
      {},
      [
        'mold must be given, got nothing',
        'pattern must be given, got nothing',
        'quantity must be given, got nothing',
      ],
    ],
    [{ ...ASKED, mold: 'Ghost' }, ['mold must be listed in Molds, got "Ghost"']],
    [{ ...ASKED, pattern: '<b>' }, ['pattern must be listed in Patterns, got "<b>"']],
    [
      { ...ASKED, quantity: '-3', due: 'soon' },
      ['quantity must be at least 1, got -3', 'due must be a date, got "soon"'],
    ],
    [
      { ...ASKED, moldsInUse: '40' },
      ['molds in use must be at most the copies of Round stick 5 in owned (2), got 40'],
    ],
    [
      { ...ASKED, customer: 'x'.repeat(101) },
      [
        'customer must be at most 100 characters long, got "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…"',
      ],
    ],
    [{ ...ASKED, wish: 'cheap' }, ['wish must be a field that this command knows, got "cheap"']],
  ] as const)('nonsense gets a sentence at each field: %#', async (values, texts) => {
    const answer = await book.ask('quoteFor', { values: values as QuoteValues });
    expect(answer.kind === 'refused' && answer.problems.map(({ text }) => text)).toEqual(texts);
    expect(answer.kind === 'refused' && answer.problems.every(({ field }) => field !== '')).toBe(
      true,
    );
  });

  test.each([undefined, null, 'x', [], { values: 7 }, { values: ['a'] }])(
    'a call with %j is refused, not broken',
    async (payload) => {
      const result = await book.call('quoteFor', payload);
      expect(result).toMatchObject({ kind: 'value', value: { kind: 'refused' } });
    },
  );
});

describe('makeQuote', () => {
  test('what is typed becomes an order row and a quote that the customer can be sent', async () => {
    const made = await make({ token: 'new-1', values: ASKED });
    expect(made).toMatchObject({ made: 'now', quote: 'Q-2026-001', order: '1013' });
    expect(made.form).toMatchObject({
      order: '1013',
      quoted: { quote: 'Q-2026-001', validUntil: '2026-12-31', isExpired: false, total: 11450 },
    });
    const row = rowOf(ORDERS, 14);
    expect(row).toMatchObject({
      Order: '1013',
      Customer: 'Customer 150',
      Mold: 'Round stick 5 in',
      Pattern: 'Dusk line',
      Quantity: 50,
      Status: 'asked',
      Shipping: 9.5,
      Quote: 'Q-2026-001',
    });
    expect([
      day(row['Date']),
      day(row['Due']),
      day(row['Quoted on']),
      day(row['Valid until']),
    ]).toEqual(['2026-12-01', '2026-12-20', '2026-12-01', '2026-12-31']);
    expect(rowOf(QUOTES, 2)).toMatchObject({
      Quote: 'Q-2026-001',
      Order: '1013',
      Version: 2,
      'Price of a piece': 2.1,
      'Price quoted': 105,
      Total: 114.5,
      Deposit: 57.25,
      Entry: 'new-1',
    });
    expect(book.host.texts('Orders', 'AG14')[0]?.[0]).toBe('105.00');
  });

  test('the same click again makes nothing', async () => {
    const rows = [filledRows('Orders'), filledRows('Quotes')];
    const again = await make({ token: 'new-1', values: { ...ASKED, aim: '9' } });
    expect(again).toMatchObject({ made: 'before', quote: 'Q-2026-001', order: '1013' });
    expect([filledRows('Orders'), filledRows('Quotes')]).toEqual(rows);
  });

  test('two people at once get two orders and two numbers', async () => {
    const [one, other] = await Promise.all([
      book.ask('makeQuote', { token: 'pair-a', values: ASKED }, { window: 'a' }),
      book.ask('makeQuote', { token: 'pair-b', values: ASKED }, { window: 'b' }),
    ]);
    const made = [one, other].map((answer) =>
      answer.kind === 'ok' ? `${answer.order} ${answer.quote}` : JSON.stringify(answer),
    );
    expect(made.sort()).toEqual(['1014 Q-2026-002', '1015 Q-2026-003']);
    expect(filledRows('Orders')).toBe(16);
    expect(filledRows('Quotes')).toBe(4);
  });

  test('a quote of a row writes its own cells and touches nothing else', async () => {
    const before = rowOf(ORDERS, 13);
    const terms = {
      by: 'markup',
      aim: '90',
      rush: '',
      discount: '5',
      shipping: '',
      saleKind: 'retail',
    };
    const made = await make({ order: '1012', token: 'row-1', values: terms });
    expect(made).toMatchObject({ made: 'now', quote: 'Q-2026-004', order: '1012' });
    const after = rowOf(ORDERS, 13);
    const changed = Object.keys(after).filter(
      (key) => String(after[key] ?? '') !== String(before[key] ?? ''),
    );
    expect(changed).toEqual(['Rush', 'Discount', 'Shipping', 'Quote', 'Quoted on', 'Valid until']);
    expect(after).toMatchObject({ Discount: 0.05, Quote: 'Q-2026-004', 'Sale kind': 'retail' });
    expect(['', null]).toContain(after['Rush']);
  });

  test('an order that was quoted opens at the price that the customer was told', async () => {
    const form = await book.ask('startQuote', { order: '1012' });
    const each = String(rowOf(QUOTES, 5)['Price of a piece']);
    expect(form).toMatchObject({ values: { by: 'price of a piece', aim: each, discount: '5' } });
  });

  test.each(HOSTILE.filter((text) => !text.includes('\u0000')))(
    'text stays text, in the row and on paper: %s',
    async (hostile) => {
      const made = await make({
        token: `bad-${hostile.length}-${hostile.charCodeAt(2)}`,
        values: { ...ASKED, customer: hostile },
      });
      const rows = book.host.values('Orders', 'A1:D60');
      expect(rows.find(([order]) => order === made.order)?.[3]).toBe(hostile);
      const answer = await book.ask('quoteDocumentFor', { order: made.order, quote: made.quote });
      expect(answer.kind === 'ok' && answer.document.head).toContainEqual(['Customer', hostile]);
    },
  );

  test.each([
    [
      { order: '1009', token: 't' },
      'Order 1009 was accepted on 2026-11-23 at its price agreed: clear Accepted on and Price agreed in Orders to quote it anew.',
    ],
    [{ order: '1011', token: 't' }, 'Order 1011 is canceled: set its status to asked to quote it.'],
    [{ order: 'nobody', token: 't' }, 'order must be listed in Orders, got "nobody"'],
    [{ order: '1012' }, 'token must be given, got nothing'],
  ])('%j is refused and nothing is written', async (payload, text) => {
    const rows = filledRows('Quotes');
    const answer = await book.ask('makeQuote', {
      ...payload,
      values: {},
    } as PayloadOf<'makeQuote'>);
    expect(answer).toEqual({ kind: 'refused', problems: [expect.objectContaining({ text })] });
    expect(filledRows('Quotes')).toBe(rows);
  });

  test('everything that is wrong with the form is told at once, at its fields', async () => {
    const values = { ...ASKED, quantity: 'some', aim: '', discount: 'much', shipping: '-1' };
    const answer = await book.ask('makeQuote', { token: 'wrong', values });
    expect(answer.kind === 'refused' && answer.problems.map(({ field }) => field).sort()).toEqual([
      'aim',
      'discount',
      'quantity',
      'shipping',
    ]);
  });
});

describe('printQuote', () => {
  test('opens the dialog of the quote as it was made, whatever changed since', async () => {
    const named = { order: '1013', quote: 'Q-2026-001' };
    await typeInto('Orders', 'H14', '60');
    expect(await book.ask('printQuote', named)).toEqual({ kind: 'ok', quote: 'Q-2026-001' });
    const dialog = book.shown.at(-1);
    const html = dialog?.kind === 'dialog' ? dialog.html : '';
    const encoded = /data-request="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(JSON.parse(decodeURIComponent(encoded))).toEqual(named);
    const answer = await book.ask('quoteDocumentFor', named);
    expect(answer.kind === 'ok' && answer.document.goods).toContainEqual(['Quantity', '50 pieces']);
    await typeInto('Orders', 'H14', '50');
  });

  test('one that is not kept, or was changed, is refused in a sentence', async () => {
    expect(await book.ask('printQuote', { order: '1009', quote: 'Q-1009' })).toEqual({
      kind: 'refused',
      problems: [
        { field: '', text: 'Quote Q-1009 of order 1009 is not in Quotes: make the quote again.' },
      ],
    });
    const kept = book.host.texts('Quotes', 'S3')[0]?.[0] ?? '';
    await typeInto('Quotes', 'S3', 'scribble');
    const { Order: order, Quote: quote } = rowOf(QUOTES, 3);
    expect(
      await book.ask('quoteDocumentFor', { order: String(order), quote: String(quote) }),
    ).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: `Quote ${quote} was changed in Quotes and cannot be printed: make the quote again.`,
        },
      ],
    });
    await typeInto('Quotes', 'S3', kept);
  });
});

describe('acceptQuote', () => {
  const named = { order: '1013', quote: 'Q-2026-001' };

  test('a changed order is not accepted at the old quote', async () => {
    await typeInto('Orders', 'H14', '60');
    expect(await book.ask('acceptQuote', named)).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'Order 1013 was changed after quote Q-2026-001: quantity is 60 now and was 50. Make the quote again.',
        },
      ],
    });
    await typeInto('Orders', 'H14', '50');
  });

  test('an expired quote is refused until it is made again', async () => {
    await typeInto('Orders', 'W14', '2026-11-30');
    expect(await book.ask('acceptQuote', named)).toMatchObject({
      problems: [
        {
          text: 'Quote Q-2026-001 was valid until 2026-11-30: make the quote again before it is accepted.',
        },
      ],
    });
    const terms = { by: 'price of a piece', aim: '2.2', shipping: '9.5' };
    const made = await make({ order: '1013', token: 'again', values: terms });
    expect(await book.ask('acceptQuote', named)).toMatchObject({
      problems: [
        {
          text: `Order 1013 has quote ${made.quote} by now, not Q-2026-001: open it again and look at it first.`,
        },
      ],
    });
    const accepted = await book.ask('acceptQuote', { order: '1013', quote: made.quote });
    expect(accepted).toMatchObject({
      kind: 'ok',
      accepted: 'now',
      on: '2026-12-01',
      form: { accepted: { on: '2026-12-01', price: 11000 } },
    });
    const row = rowOf(ORDERS, 14);
    expect(row).toMatchObject({ Version: 2, 'Price agreed': 110, Status: 'accepted' });
    expect(day(row['Accepted on'])).toBe('2026-12-01');
  });

  test('a second acceptance changes nothing', async () => {
    const before = rowOf(ORDERS, 14);
    const quote = String(before['Quote']);
    expect(await book.ask('acceptQuote', { order: '1013', quote })).toMatchObject({
      kind: 'ok',
      accepted: 'before',
      on: '2026-12-01',
    });
    expect(rowOf(ORDERS, 14)).toEqual(before);
  });

  test('two people who accept at once fix it once', async () => {
    const both = { order: '1014', quote: 'Q-2026-002' };
    const answers = await Promise.all(
      ['a', 'b'].map((window) => book.ask('acceptQuote', both, { window })),
    );
    expect(answers.map((answer) => answer.kind === 'ok' && answer.accepted).sort()).toEqual([
      'before',
      'now',
    ]);
  });
});
