import { describe, expect, test } from 'vitest';
import { elementsToHtml } from '../../../shared/elements/elementsToHtml.ts';
import { stockSummary } from '../../../shared/money/stock/stockSummary.ts';
import {
  type PurchasesDocument,
  purchasesElements,
} from '../../../shared/paper/purchases/purchasesElements.ts';
import { demoMoneyBook } from '../../money/stock/demoMoneyBook.ts';
import { HOSTILE } from '../hostile.ts';

const DEMO: PurchasesDocument = {
  shopName: 'Demo shop (invented)',
  date: '2026-12-01',
  ...stockSummary(demoMoneyBook()),
};

function page(changes: Partial<PurchasesDocument> = {}): string {
  return elementsToHtml(purchasesElements({ ...DEMO, ...changes }));
}

describe('purchasesElements', () => {
  test('is a table for each supplier, a line for each material, and what they cost together', () => {
    const html = page();
    const [, ...parts] = html.split('<section>');
    expect(parts.map((part) => /<h2>(.*?)<\/h2>/.exec(part)?.[1])).toEqual([
      'Supplier 1',
      'Supplier 4',
    ]);
    expect(parts[0]).toContain(
      '<tr><td class="tick">☐</td><th scope="row">Plastisol soft</th><td>2 × 1 gal</td><td>$124.00</td><td>',
    );
    expect(html.match(/☐/g)).toHaveLength(DEMO.purchases.lines.length);
    expect(html).toMatch(/<p class="total">Together \$[\d,]+\.\d\d at the prices in the book\.</);
    expect(html).toContain('<p>Demo shop (invented), 2026-12-01, amounts in USD</p>');
  });

  test('what nobody knows is said: no supplier, no pack, no price', () => {
    const line = { material: 'Glitter', supplier: '', onHand: -2, needed: 0, free: -2 };
    const unknown = { ...line, isLow: false, packs: 0, noPacks: 'pack size must be given' };
    const html = page({ purchases: { lines: [unknown], total: 0, unpriced: 1 } });
    expect(html).toContain('<h2>No supplier given</h2>');
    expect(html).toContain('<td>Pack size must be given.</td><td>not known</td>');
    expect(html).toContain('Stock stands at -2: look at Stock moves first.');
    expect(html).toContain(' 1 line without a price not counted.');
  });

  test('says that there is nothing to buy, and what was not counted', () => {
    const html = page({
      shopName: '',
      currency: 'JPY',
      purchases: { lines: [], total: 0, unpriced: 0 },
      uncounted: [{ order: '9', text: 'mold must be given, got nothing' }],
      assumptions: ['soda is at hand'],
    });
    expect(html).toContain('<p>2026-12-01, amounts in JPY</p><p>Nothing to buy: ');
    expect(html).not.toContain('Together');
    expect(html).toContain(
      '<ul><li>Order 9 is not counted: mold must be given, got nothing.</li><li>Soda is at hand.</li></ul>',
    );
  });

  test.each(HOSTILE)('names such as %j stay text', (evil) => {
    const lines = DEMO.purchases.lines.map((line) => ({ ...line, supplier: evil, material: evil }));
    const html = page({ shopName: evil, purchases: { ...DEMO.purchases, lines } });
    expect(html.match(/<(script|img|style|svg)/g)).toBeNull();
  });
});
