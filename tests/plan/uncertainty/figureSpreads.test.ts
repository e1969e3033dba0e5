import { describe, expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { DEFAULTS } from '../../../shared/material/defaults.ts';
import { findOrder } from '../../../shared/plan/facts/findOrder.ts';
import { type HeatFigures, usualFigures } from '../../../shared/plan/heat/heatFigures.ts';
import { figureSpreads } from '../../../shared/plan/uncertainty/figureSpreads.ts';
import { sampledFigures } from '../../../shared/plan/uncertainty/sampledFigures.ts';
import { UNCERTAIN_FIGURES } from '../../../shared/plan/uncertainty/uncertainFigures.ts';
import { drawnValue } from '../../../shared/uncertainty/drawnValue.ts';
import { rankCorrelation } from '../../../shared/uncertainty/rankCorrelation.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

function plateAndShop(
  change: Partial<(typeof DEMO.plates)[number]>,
  shop: DemoChanges['shop'] = {},
) {
  const book = demoBook({ plates: withChange(DEMO.plates, 0, change), shop });
  const found = findOrder(indexBook(book), book.orders[0] ?? { row: 2, record: {} });
  if (found.kind === 'missing') throw new Error(found.missing.map(({ text }) => text).join());
  return { plate: found.facts.plate, shop: book.shop };
}

function rangeOf(key: keyof HeatFigures, ...given: Parameters<typeof plateAndShop>) {
  const { plate, shop } = plateAndShop(...given);
  const spread = figureSpreads(plate, shop)[key];
  return { low: drawnValue(0, spread), high: drawnValue(1, spread) };
}

describe('figureSpreads', () => {
  test('the figure in use is always one of those drawn', () => {
    for (const change of [
      {},
      { contactConductance: undefined },
      { dialOffset: -8, heatLoss: 1.4 },
    ]) {
      const { plate, shop } = plateAndShop(change, { setTemperature: 97, bondTemperature: 119 });
      const usual = usualFigures(plate, shop);
      const spreads = figureSpreads(plate, shop);
      for (const key of Object.keys(UNCERTAIN_FIGURES) as (keyof HeatFigures)[]) {
        // the table’s own keys
        expect(drawnValue(0, spreads[key])).toBeLessThan(usual[key]);
        expect(drawnValue(1, spreads[key])).toBeGreaterThan(usual[key]);
      }
    }
  });

  test('what a pour loses is drawn over its default’s range, or 2 K around the shop’s own reading', () => {
    expect(rangeOf('pourLoss', {})).toEqual({ low: 3, high: 15 });
    expect(rangeOf('pourLoss', {}, { pourLoss: 9 })).toEqual({ low: 7, high: 11 });
  });

  test('a contact nobody fitted is drawn over the range of its kind of plate', () => {
    const griddle = rangeOf('contactConductance', { contactConductance: undefined });
    // Rounding of a logarithm and its inverse, here and below.
    expect(griddle.low).toBeNear(55, { relative: 1e-12 });
    expect(griddle.high).toBeNear(170, { relative: 1e-12 });
    const thick = { contactConductance: undefined, kind: 'flat thick plate' } as const;
    expect(rangeOf('contactConductance', thick).low).toBeNear(300, { relative: 1e-12 });
    expect(rangeOf('contactConductance', thick).high).toBeNear(2000, { relative: 1e-12 });
  });

  test('a fitted contact is drawn three standard errors around its value; one without an error, so that nine of ten lie within 30 %', () => {
    const fitted = { contactConductance: 110, contactError: 6 };
    expect(rangeOf('contactConductance', fitted)).toEqual({ low: 92, high: 128 });
    const { plate, shop } = plateAndShop({ contactConductance: 110 });
    const spread = figureSpreads(plate, shop).contactConductance;
    // 1.645 x 0.18 is 0.296
    expect(drawnValue(0.05, spread)).toBeNear(77, { relative: 0.01 });
    expect(drawnValue(0.95, spread)).toBeNear(143, { relative: 0.01 });
  });

  test('a dial is 15 K off either way on a griddle, 5 K on a thick plate, 2 K around what a shop has measured', () => {
    expect(rangeOf('dialOffset', {})).toEqual({ low: -15, high: 15 });
    expect(rangeOf('dialOffset', { kind: 'flat thick plate' })).toEqual({ low: -5, high: 5 });
    expect(rangeOf('dialOffset', { dialOffset: -9 })).toEqual({ low: -11, high: -7 });
  });

  test('a loss from the shop’s own trials is surer than the published one', () => {
    expect(rangeOf('lossShare', {})).toEqual({ low: 0.8, high: 1.25 });
    const own = rangeOf('lossShare', { heatLoss: 2 });
    expect(own.low).toBeNear(1.7, { relative: 1e-12 }); // rounding only
    expect(own.high).toBeNear(2.3, { relative: 1e-12 });
  });

  test('the range of a default moves with the shop’s own value', () => {
    const { low, high } = rangeOf('setTemperature', {}, { setTemperature: 97 });
    expect([low, high]).toEqual([87, 110]); // 82 to 105 around 92
    expect(rangeOf('firmTemperature', {}, { firmTemperature: 112 })).toEqual({
      low: 102,
      high: 122,
    });
    expect(rangeOf('bondTemperature', {}, { bondTemperature: 118 })).toEqual({
      low: 114,
      high: 124,
    });
    const { specificHeat } = DEFAULTS;
    const { low: least, high: most } = specificHeat;
    expect(rangeOf('specificHeat', {})).toEqual({ low: least, high: most });
  });
});

describe('drawFigures', () => {
  test('fills the range of every figure evenly, and ranks them as drawn', () => {
    const { plate, shop } = plateAndShop({ contactConductance: undefined });
    const { figures, ranks } = sampledFigures(plate, shop, { draws: 64, seed: 4 });
    expect(figures).toHaveLength(64);
    expect([...ranks.keys()].sort()).toEqual(Object.keys(UNCERTAIN_FIGURES).sort());
    const spreads = figureSpreads(plate, shop);
    for (const [key, own] of ranks) {
      const values = figures.map((drawn) => drawn[key]);
      const sorted = [...values].sort((one, other) => one - other);
      expect(own.map((rank) => sorted[rank - 1])).toEqual(values);
      // Equal steps of chance: the middle pair lies either side of the median, the ends within one step of theirs.
      expect(sorted[31]).toBeLessThan(drawnValue(33 / 64, spreads[key]));
      expect(sorted[32]).toBeGreaterThan(drawnValue(31 / 64, spreads[key]));
      expect(sorted[0]).toBeLessThan(drawnValue(1 / 64, spreads[key]) + 1e-9);
      expect(sorted[63]).toBeGreaterThan(drawnValue(63 / 64, spreads[key]) - 1e-9);
    }
  });
});

test('drawFigures draws each figure on its own: no two go together', () => {
  const { plate, shop } = plateAndShop({});
  const { ranks } = sampledFigures(plate, shop, { draws: 96, seed: 1 });
  const drawn = [...ranks.values()];
  drawn.forEach((one, index) => {
    for (const other of drawn.slice(0, index))
      expect(Math.abs(rankCorrelation(one, other))).toBeLessThan(0.35); // what a band takes for noise
  });
});

describe('UNKNOWNS', () => {
  test('names every figure of a plan’s heat once, in words that go inside a sentence', () => {
    const { plate, shop } = plateAndShop({});
    expect(Object.keys(UNCERTAIN_FIGURES).sort()).toEqual(
      Object.keys(usualFigures(plate, shop)).sort(),
    );
    const texts = Object.values(UNCERTAIN_FIGURES).flatMap(({ words, trial }) => [words, trial]);
    expect(new Set(texts).size).toBe(texts.length);
    for (const text of texts) expect(text).toMatch(/^[a-z].*[^.]$/);
  });
});
