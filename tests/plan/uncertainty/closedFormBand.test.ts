import { describe, expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { findOrder } from '../../../shared/plan/facts/findOrder.ts';
import { sampledFigures } from '../../../shared/plan/uncertainty/sampledFigures.ts';
import { band } from '../../../shared/uncertainty/band.ts';
import { DEMO, demoBook, withChange } from '../../book/demoBook.ts';
import { moldHeatUp } from '../../heat/moldHeatUp.ts';
import { pseudoRandom } from '../../uncertainty/pseudoRandom.ts';

const INCH = 0.0254;
const GRIDDLE = { contactConductance: undefined, kind: 'thin griddle' } as const;

interface Drawn {
  readonly contactConductance: number;
  readonly lossShare: number;
  readonly dialOffset: number;
}

/** Minutes of fact 1's block by the closed form; a target low enough that it is always reached. */
function minutes({ contactConductance, lossShare, dialOffset }: Drawn): number {
  const mold = {
    length: 6 * INCH,
    width: 4 * INCH,
    height: INCH,
    roomTemperature: 22,
    contactConductance,
    lossCoefficient: 10.4 * lossShare,
  };
  const { time } = moldHeatUp({ mold, plateSetting: 132 + dialOffset }, 85);
  return time.kind === 'reached' ? time.seconds / 60 : Number.POSITIVE_INFINITY;
}

function evenBand(draws: number, seed: number) {
  const book = demoBook({ plates: withChange(DEMO.plates, 0, GRIDDLE) });
  const found = findOrder(indexBook(book), book.orders[0] ?? { row: 2, record: {} });
  if (found.kind === 'missing') throw new Error('the demo is whole');
  const { figures, ranks } = sampledFigures(found.facts.plate, book.shop, { draws, seed });
  return band(figures.map(minutes), ranks);
}

/** The same ranges drawn by rejection, without any quantile function: a triangular density lies under its peak. */
function plainBand(draws: number) {
  const next = pseudoRandom(7);
  const triangle = (low: number, mode: number, high: number): number => {
    for (;;) {
      const x = low + next() * (high - low);
      const height = x < mode ? (x - low) / (mode - low) : (high - x) / (high - mode);
      if (next() < height) return x;
    }
  };
  const answers = Array.from({ length: draws }, () =>
    minutes({
      contactConductance: Math.exp(triangle(Math.log(55), Math.log(100), Math.log(170))),
      lossShare: triangle(0.8, 1, 1.25),
      dialOffset: triangle(-15, 0, 15),
    }),
  ).sort((one, other) => one - other);
  return { low: answers[draws * 0.05] ?? 0, high: answers[draws * 0.95] ?? 0 };
}

describe('the band of a closed form', () => {
  const plain = plainBand(100_000);
  const width = plain.high - plain.low;
  const seeds = Array.from({ length: 20 }, (_, index) => index + 1);
  const bands = seeds.map((seed) => evenBand(96, seed));

  test('agrees with 100,000 pseudo-random draws', () => {
    for (const end of ['low', 'high'] as const) {
      const mean = bands.reduce((sum, one) => sum + (one[end] ?? Number.NaN), 0) / seeds.length;
      // Of the width; the mean of twenty seeds scatters by about 1 %.
      expect(mean).toBeNear(plain[end], { absolute: 0.03 * width });
    }
  });

  test('scatters from seed to seed by at most 6 % of its width, one standard error', () => {
    for (const end of ['low', 'high'] as const) {
      const squares = bands.map((one) => ((one[end] ?? Number.NaN) - plain[end]) ** 2);
      const scatter = Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / seeds.length);
      expect(scatter / width).toBeLessThan(0.06);
    }
  });

  test('names the contact every time: models and study agree that it decides', () => {
    for (const { widest } of bands) expect(widest).toBe('contactConductance');
  });
});
