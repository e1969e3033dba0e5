import { describe, expect, test } from 'vitest';
import { MONEY_TABLES } from '../../../shared/book/book.ts';
import {
  columnLetters,
  declaredColumns,
  isOrdersFormula,
  ordersFormula,
} from '../../../shared/book/layout/ordersFormula.ts';
import { findComputed } from '../../../shared/book/reading/findComputed.ts';
import { ORDERS } from '../../../shared/book/tables/orders.ts';
import { TABLES } from '../../../shared/book/tables.ts';

describe('ordersFormula', () => {
  test('ordersFormula hands over every plan sheet, in order, from its heading down', () => {
    expect(ordersFormula('Pieces to pour', declaredColumns())).toBe(
      '=POUR_ORDERS("pieces to pour"; Orders!A1:Y; Molds!A1:P; Patterns!A1:I; Doses!A1:H; Materials!A1:Q; Plates!A1:P; \'Pour log\'!A1:AN; Shop!A1:C)',
    );
  });

  test('a money column also hands over supplies and stock moves, to its own function', () => {
    expect(ordersFormula('Quote price', declaredColumns())).toBe(
      "=POUR_MONEY(\"quote price\"; Orders!A1:Y; Molds!A1:P; Patterns!A1:I; Doses!A1:H; Materials!A1:Q; Plates!A1:P; 'Pour log'!A1:AN; Supplies!A1:E; 'Stock moves'!A1:J; Shop!A1:C)",
    );
    expect(isOrdersFormula('=POUR_MONEY("cost"; Orders!A1:Y)', 'Cost')).toBe(true);
    expect(isOrdersFormula('=POUR_ORDERS("cost", Orders!A1:Y)', 'Cost')).toBe(false);
  });

  test('declaredColumns of Orders stops before the first column that fills itself', () => {
    const kinds = Object.values(ORDERS.columns).map(({ kind }) => kind);
    expect(declaredColumns().orders).toBe(kinds.indexOf('computed'));
  });

  test('no table but Orders has columns that fill themselves, so nothing refers in a circle', () => {
    for (const key of MONEY_TABLES.filter((one) => one !== 'orders'))
      expect(declaredColumns()[key]).toBe(Object.keys(TABLES[key].columns).length);
  });

  test('isOrdersFormula knows its own column, whatever the ranges and the case', () => {
    expect(isOrdersFormula('=pour_orders("Cups", Orders!A1:Z)', 'Cups')).toBe(true);
    expect(isOrdersFormula('=POUR_ORDERS("cups per round", A1:B)', 'Cups')).toBe(false);
    expect(isOrdersFormula('Cups', 'Cups')).toBe(false);
  });

  test.each([
    [1, 'A'],
    [26, 'Z'],
    [27, 'AA'],
    [52, 'AZ'],
    [53, 'BA'],
    [702, 'ZZ'],
    [703, 'AAA'],
  ])('columnLetters of %i is %s', (number, expected) => {
    expect(columnLetters(number)).toBe(expected);
  });
});

describe('findComputed', () => {
  const formulas = [
    '',
    '',
    ordersFormula('Cups', declaredColumns()),
    ordersFormula('Rounds', declaredColumns()),
  ];

  test('findComputed knows a column by its formula when the heading shows an error, and by its words when there is none', () => {
    const { places, missing } = findComputed(
      ORDERS,
      ['Order', 'Plastisol (fl oz)', '#ERROR!', 'Rounds'],
      formulas,
    );
    expect(places.map(({ key, index }) => [key, index])).toEqual([
      ['rounds', 3],
      ['plastisol', 1],
      ['cups', 2],
    ]);
    expect(missing.map(({ heading }) => heading)).toEqual([
      'Pieces to pour',
      'Plate on',
      'Minutes of work',
      'Cost',
      'Quote price',
      'Margin',
      'Money notes',
      'Warnings',
    ]);
  });
});
