import { describe, expect, test } from 'vitest';
import { dayOrders, openOrders } from '../../../shared/day/shop/dayOrders.ts';
import { DEMO, withChange } from '../../book/demoBook.ts';
import { DAY } from '../planning/demoDay.ts';
import { dayBook } from './dayBook.ts';

const ASKED = { firstDay: '2026-11-30', days: 5 };

test('open orders: accepted or planned, by their due dates, those without one last', () => {
  const statuses = ['planned', 'asked', 'accepted', 'poured', 'accepted'] as const;
  const dues = [undefined, '2026-12-01', '2026-12-09', '2026-12-01', '2026-12-03'];
  const orders = statuses.map((status, place) => ({
    ...{ order: String(place), status, due: dues[place] },
  }));
  expect(openOrders(dayBook({ orders }))).toEqual(['4', '2', '0']);
});

describe('due', () => {
  test('by the end of the due day, or of as many days before it as the shop needs', () => {
    const { orders } = dayOrders(dayBook(), ['2041', '2042'], ASKED);
    expect(orders.map(({ due }) => due)).toEqual([5 * DAY, undefined]); // Friday, 4 days on
    const early = dayBook({ shop: { packedBefore: 2 } });
    expect(dayOrders(early, ['2041'], ASKED).orders[0]?.due).toBe(3 * DAY);
  });

  test('a due date that is over lies before the first day', () => {
    const { orders } = dayOrders(dayBook(), ['2041'], { ...ASKED, firstDay: '2026-12-06' });
    expect(orders[0]?.due).toBe(-DAY);
  });
});

test('each order once, and why one has no plan', () => {
  const orders = withChange(DEMO.orders, 1, { mold: 'Frog' });
  const { runs, leftOut } = dayOrders(dayBook({ orders }), ['2041', ' 2041', '2042', '9'], ASKED);
  expect(runs.map(({ order }) => order)).toEqual(['2041']);
  expect(leftOut).toEqual([
    { order: '2042', because: 'mold must be listed in Molds, got "Frog"' },
    { order: '9', because: 'Orders does not list it' },
  ]);
});

describe('plates', () => {
  const twin = { ...DEMO.plates[0], plate: 'Twin griddle', circuit: 'Island', notes: 'newer' };
  const plates = [...DEMO.plates, twin];

  test('an order that names its plate stays there', () => {
    const { orders } = dayOrders(dayBook({ plates }), ['2041'], ASKED);
    expect(orders[0]?.plates).toEqual(['Long griddle']);
  });

  test('one that names none goes on any that heats alike', () => {
    const { orders } = dayOrders(dayBook({ plates }), ['2042'], ASKED);
    expect(orders[0]?.plates).toEqual(['Long griddle', 'Twin griddle']);
    const slower = [...DEMO.plates, { ...twin, warmUp: 600 }];
    const other = dayOrders(dayBook({ plates: slower }), ['2042'], ASKED);
    expect(other.orders[0]?.plates).toEqual(['Long griddle']);
  });
});

test('colors are the materials in them, whatever the pattern is called', () => {
  const renamed = DEMO.patterns.flatMap((row) =>
    row.pattern === 'Two tone' ? [row, { ...row, pattern: 'Two again' }] : [row],
  );
  const doses = DEMO.doses.flatMap((row) =>
    row.pattern === 'Two tone' ? [row, { ...row, pattern: 'Two again' }] : [row],
  );
  const orders = [
    ...DEMO.orders,
    { order: '2044', mold: 'Paddle 3 in', pattern: 'Two again', quantity: 12 },
  ];
  const book = dayBook({ patterns: renamed, doses, orders });
  const found = dayOrders(book, ['2042', '2044', '2041'], ASKED).orders;
  expect(found.map(({ colors }) => colors)).toEqual([
    'Black dispersion\nFirm plastisol',
    'Black dispersion\nFirm plastisol',
    'Black dispersion\nFine glitter\nGreen dispersion\nPearl powder\nSoft plastisol\nWhite dispersion',
  ]);
});
