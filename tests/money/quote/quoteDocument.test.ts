import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elementsToHtml } from '../../../shared/elements/elementsToHtml.ts';
import { type QuoteDocument, quoteDocument } from '../../../shared/money/quote/quoteDocument.ts';
import type { QuoteFacts } from '../../../shared/money/quote/quoteFacts.ts';
import type { Pricing } from '../../../shared/money/quote/readPricing.ts';
import { readQuoteDocument } from '../../../shared/money/quote/readQuoteDocument.ts';
import { quoteElements } from '../../../shared/paper/quote/quoteElements.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { factsOf, pricesOf, pricing } from './quoteBench.ts';

const FACTS = factsOf({ customer: 'Customer 150', due: '2026-12-20' });
const IDENTITY = Object.freeze({
  quote: 'Q-2026-001',
  order: '1013',
  quotedOn: '2026-11-30',
  validUntil: '2026-12-30',
});

function made(asked: Pricing = pricing(), facts: QuoteFacts = FACTS): QuoteDocument {
  return quoteDocument(facts, pricesOf(facts, asked), IDENTITY);
}

/** An amount of US dollars as it is printed, in cents. */
function cents(words = ''): number {
  const [, sign, figures = ''] = /^(-?)\$([\d,]+\.\d\d)$/.exec(words) ?? [];
  if (figures === '') throw new Error(`no amount: ${words}`);
  return Math.round(Number(figures.replaceAll(',', '')) * 100) * (sign === '-' ? -1 : 1);
}

describe('quoteDocument', () => {
  test('is numbered, dated and limited, and says what is sold in plain words', () => {
    const { head, goods, shopName, terms } = made();
    expect(shopName).toBe('Demo shop (invented)');
    expect(head).toEqual([
      ['Quote', 'Q-2026-001'],
      ['Date', '2026-11-30'],
      ['Valid until', '2026-12-30'],
      ['Order', '1013'],
      ['Customer', 'Customer 150'],
      ['All amounts in', 'USD'],
    ]);
    expect(goods).toEqual([
      ['Pattern', 'Dusk line, version 2: 3 layers, belly, line and back'],
      ['Mold', 'Round stick 5 in'],
      ['Quantity', '50 pieces'],
      ['Wanted by', '2026-12-20'],
    ]);
    expect(terms).toEqual([FACTS.shop.quoteTerms]);
  });

  test('its lines add up to the total, and deposit and balance too, at any terms', () => {
    const terms = fc.record({
      rush: fc.constantFrom(undefined, 'rush' as const),
      discount: fc.integer({ min: 0, max: 99 }).map((percent) => percent / 100),
      shipping: fc.integer({ min: 0, max: 9999 }).map((amount) => amount / 100),
      saleKind: fc.constantFrom(undefined, 'retail' as const),
      exciseStatus: fc.constantFrom(undefined, 'export' as const),
    });
    const shops = [FACTS, factsOf({}, { exciseIn: 'added to the price', minimumOrder: 300 })];
    fc.assert(
      fc.property(terms, fc.constantFrom(...shops), (asked, facts) => {
        const { lines, sums } = made(pricing({ terms: asked }), facts);
        const added = lines.reduce((sum, [, amount]) => sum + cents(amount), 0);
        const [total, deposit, balance] = sums.map(([, amount]) => cents(amount));
        expect(added).toBe(total);
        expect((deposit ?? 0) + (balance ?? 0)).toBe(total);
      }),
      { numRuns: 100 },
    );
  });

  test('each row of the table is the pieces times the price of one', () => {
    const rows = made().breaks;
    expect(rows.map(([quantity]) => quantity)).toEqual(['25', '50', '100', '250']);
    for (const [quantity, each, pieces] of rows)
      expect(cents(pieces)).toBe(Number(quantity) * cents(each));
  });

  test('names no cost, no margin and no part of either, whatever they are', () => {
    const { price, breaks } = pricesOf(FACTS, pricing({ terms: { rush: 'rush', discount: 0.05 } }));
    const marked = { cost: 7654321, net: 8765432, margin: 0.43219, markup: 0.65437 };
    const line = {
      key: 'labor',
      label: 'Secret work',
      amount: 5432.1,
      rate: 4321.9,
      minor: 3219876,
    } as const;
    const facts: QuoteFacts = {
      ...FACTS,
      cost: { ...FACTS.cost, lines: [line], total: 6543219, perGood: 2198765.4 },
      quantities: FACTS.quantities.map((one) => ({ ...one, carried: 1987654, cost: 9182736 })),
      assumptions: ['Secret assumption'],
    };
    const secret = breaks.map((one) =>
      one.price.kind === 'price' ? { ...one, price: { ...one.price, ...marked } } : one,
    );
    const asked = { price: { ...price, ...marked }, breaks: secret };
    const text = JSON.stringify(quoteDocument(facts, asked, IDENTITY));
    expect(text).toBe(JSON.stringify(quoteDocument(FACTS, { price, breaks }, IDENTITY)));
    expect(text).not.toMatch(/secret|margin|markup|overhead|labor|wear|cost/i);
  });

  test.each([
    ['inside', {}, {}, /^Excise of 10 % on \$[\d.]+: \$[\d.]+, inside the price\.$/],
    [
      'added',
      {},
      { exciseIn: 'added to the price' },
      /^Excise of 10 % on \$[\d.]+: \$[\d.]+, added to the price\.$/,
    ],
    ['export', { exciseStatus: 'export' }, {}, /^No excise: the sale is marked for export\.$/],
  ] as const)('says in words that the excise is %s', (_case, terms, shop, words) => {
    const { notes } = made(pricing({ terms }), factsOf({}, shop));
    expect(notes.filter((note) => words.test(note))).toHaveLength(1);
    expect(notes.some((note) => note.includes('Ask a tax adviser'))).toBe(
      !('exciseStatus' in terms),
    );
  });

  test('says nothing of an excise that is off, of tax that is none, of a deposit of 0', () => {
    const facts = factsOf({}, { excise: 'off', depositShare: 0, quoteTerms: '' });
    const { notes, sums, lines, terms } = made(pricing(), facts);
    expect(notes.join(' ')).not.toMatch(/excise/i);
    expect(sums.map(([label]) => label)).toEqual(['Total']);
    expect(lines.map(([label]) => label)).toEqual([
      `50 pieces at ${made(pricing(), facts).breaks[1]?.[1]}`,
    ]);
    expect(terms).toEqual([]);
  });

  test('states the currency once', () => {
    const text = JSON.stringify(made(pricing(), factsOf({}, { currency: 'SEK', excise: 'off' })));
    expect(text.split('SEK')).toHaveLength(2);
  });

  test('a table of one row is left out', () => {
    expect(made(pricing({ aim: { by: 'price', perPiece: 60 } })).breaks).toEqual([]);
  });
});

describe('the quote on paper', () => {
  test.each(HOSTILE)('text that would break out stays text: %j', (hostile) => {
    const facts = {
      ...FACTS,
      customer: hostile,
      pattern: hostile,
      mold: hostile,
      layers: [hostile],
    };
    const shop = { ...FACTS.shop, shopName: hostile, quoteTerms: hostile };
    const html = elementsToHtml(quoteElements(made(pricing(), { ...facts, shop })));
    expect(html).not.toMatch(/<(script|img|svg|style|b)\b/i);
    expect(html.match(/<h1>/g)).toHaveLength(1);
  });

  test('every word of the document is on it', () => {
    const document = made(pricing({ terms: { rush: 'rush', saleKind: 'retail' } }));
    const html = elementsToHtml(quoteElements(document));
    const words = [
      ...document.head.flat(),
      ...document.goods.flat(),
      ...document.lines.flat(),
      ...document.sums.flat(),
      ...document.breaks.flat(),
      ...document.notes,
      ...document.terms,
    ];
    for (const word of words) expect(html).toContain(word);
  });
});

describe('readQuoteDocument', () => {
  test('gives back what was kept', () => {
    const document = made();
    expect(readQuoteDocument(JSON.stringify(document))).toEqual(document);
  });

  test.each([
    '',
    'hello',
    'null',
    '[]',
    '{"shopName":"x"}',
    JSON.stringify({ ...made(), lines: [['only one']] }),
    JSON.stringify({ ...made(), notes: [{}] }),
    JSON.stringify({ ...made(), breaks: 'none' }),
  ])('is nothing for text that was changed: %s', (text) => {
    expect(readQuoteDocument(text)).toBeUndefined();
  });
});
