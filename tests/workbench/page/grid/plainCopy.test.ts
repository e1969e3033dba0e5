import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainCopy } from '../../../../workbench/page/grid/plainCopy.ts';

describe('plainCopy', () => {
  test('copies what JSON can carry, as JSON would', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 3 }), (value) => {
        const plain: unknown = JSON.parse(JSON.stringify(value));
        expect(plainCopy(plain, '0')).toEqual(plain);
      }),
    );
  });

  test('an undefined entry becomes null, an undefined property goes', () => {
    expect(plainCopy({ list: [undefined, 1], gone: undefined }, '0')).toEqual({ list: [null, 1] });
  });

  const circle: { self?: unknown } = {};
  circle.self = circle;
  test.each([
    ['a date', { when: new Date(0) }, '0.when'],
    ['a date in a list', [[new Date(0)]], '0.0.0'],
    ['a function', { run: () => {} }, '0.run'],
    ['a number that is not finite', { amount: Number.NaN }, '0.amount'],
    ['a map', new Map(), '0'],
    ['circular data', circle, '0.self'],
  ])('refuses %s and says where it stands', (_what, value, path) => {
    expect(() => plainCopy(value, '0')).toThrow(
      new TypeError(`Failed due to illegal value in property: ${path}`),
    );
  });

  test('the same object twice side by side is no circle', () => {
    const part = { a: 1 };
    expect(plainCopy([part, part], '0')).toEqual([{ a: 1 }, { a: 1 }]);
  });
});
