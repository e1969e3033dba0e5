import { expect, test } from 'vitest';
import { dayShop } from '../../../shared/day/shop/dayShop.ts';
import { DEMO, withChange } from '../../book/demoBook.ts';
import { dayBook } from './dayBook.ts';
import { toBeNearAll } from './toBeNearAll.ts';

const ASKED = { firstDay: '2026-11-30', days: 1 };

test('plates by their usable area, molds by their block, cups and microwaves by the settings', () => {
  const { day, assumptions } = dayShop(
    dayBook({ shop: { cupsOwned: 7, microwaves: 2, plateRounds: 'as fit', topOff: 5 } }),
    ASKED,
  );
  expect(assumptions).toEqual([]);
  toBeNearAll(
    day.plates.map(({ area }) => area),
    [0.5 * 0.26, 0.3 * 0.3],
  );
  expect(day.plates.map(({ rounds, plug }) => [rounds, plug])).toEqual([
    ['as fit', undefined],
    ['as fit', undefined],
  ]);
  toBeNearAll(
    day.molds.map(({ footprint }) => footprint),
    [0.178 * 0.14, 0.12 * 0.1],
  );
  expect(day.molds.map(({ name, owned }) => [name, owned])).toEqual([
    ['Ribbed 4 in', 2],
    ['Paddle 3 in', 1],
  ]);
  expect(day.ovens).toEqual([{ name: 'Microwave 1' }, { name: 'Microwave 2' }]);
  expect(day.cups).toBe(7);
  expect(day.rules.topOff).toBe(5);
  expect(day.circuits).toEqual([]);
});

test('what shares a circuit shares its limit', () => {
  const plates = withChange(DEMO.plates, 0, { circuit: 'Bench' });
  const shop = { microwaveCircuit: 'Bench', microwaveDraw: 1200, circuitLimit: 2400 };
  const { day } = dayShop(dayBook({ plates, shop }), ASKED);
  expect(day.circuits).toEqual([{ name: 'Bench', watts: 2400 }]);
  expect(day.plates[0]?.plug).toEqual({ circuit: 'Bench', watts: 1500 });
  expect(day.ovens).toEqual([{ name: 'Microwave', plug: { circuit: 'Bench', watts: 1200 } }]);
});

test('a plate above its circuit’s limit is planned alone there, and it is said', () => {
  const plates = withChange(DEMO.plates, 0, { circuit: 'Bench', watts: 2000 });
  const { day, assumptions } = dayShop(dayBook({ plates }), ASKED);
  expect(day.circuits).toEqual([{ name: 'Bench', watts: 2000 }]);
  expect(assumptions).toEqual([
    'Long griddle alone takes more than the circuit limit lets Bench bear: planned as if nothing else ran beside it.',
  ]);
});

test('a plate without its size takes nothing, and it is said', () => {
  const plates = withChange(DEMO.plates, 1, { usableWidth: undefined });
  const { day, assumptions } = dayShop(dayBook({ plates }), ASKED);
  expect(day.plates.map(({ name }) => name)).toEqual(['Long griddle']);
  expect(assumptions).toEqual([
    'In Plates, row 3: without its usable length and width nothing is planned on it.',
  ]);
});
