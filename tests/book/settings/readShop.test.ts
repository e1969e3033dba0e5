import { describe, expect, test } from 'vitest';
import { CURRENCIES } from '../../../shared/book/currencies.ts';
import { bookNotes } from '../../../shared/book/layout/bookNotes.ts';
import type { CellValue } from '../../../shared/book/reading/parseCell.ts';
import { readShop } from '../../../shared/book/settings/readShop.ts';
import { settingCells } from '../../../shared/book/settings/settingCells.ts';
import { missingSettings, settingRows } from '../../../shared/book/settings/settingRows.ts';
import { SETTINGS, SHOP_HEADINGS } from '../../../shared/book/settings/settings.ts';
import { describe as sentence } from '../../../shared/errors/describe.ts';

type Cells = readonly (readonly CellValue[])[];

function sheet(system: 'US' | 'metric'): Cells {
  return [
    [...SHOP_HEADINGS],
    ...settingRows(system, bookNotes().settings).map(({ cells }) => [...cells]),
  ];
}

describe('readShop', () => {
  test('readShop of no sheet gives every default', () => {
    const { shop, problems } = readShop([]);
    expect(problems).toEqual([]);
    for (const [key, setting] of Object.entries(SETTINGS))
      expect(shop).toHaveProperty(key, setting.value);
  });

  test.each(['US', 'metric'] as const)(
    'readShop of a new sheet in %s units gives the defaults back',
    (system) => {
      const { shop, problems } = readShop(sheet(system));
      expect(problems).toEqual([]);
      const { yieldWeight, topTarget, cupFill, hardStop, units } = shop;
      expect({ yieldWeight, units }).toEqual({ yieldWeight: 10, units: 'US' });
      expect(topTarget).toBeNear(3, { relative: 1e-11 }); // cells hold 12 figures
      expect(cupFill).toBeNear(1.774e-4, { relative: 1e-11 }); // cells hold 12 figures
      expect(hardStop).toBeNear(190, { relative: 1e-11 }); // cells hold 12 figures
    },
  );

  test('readShop reads the unit that stands beside the value', () => {
    const { shop } = readShop([
      ['Elevation', 1000, 'ft'],
      ['Room temperature', 20, '°C'],
    ]);
    // HB44, Appendix C: 1 international foot is 0.3048 m by definition.
    expect(shop.elevation).toBeNear(304.8, { relative: 1e-12 }); // exact factor, binary rounding
    expect(shop.roomTemperature).toBe(20);
  });

  test('readShop finds a setting in any row and any case', () => {
    expect(
      readShop([
        ['x', 1],
        [' LEFT in each cup ', 0.1, 'oz'],
      ]).shop.cupLoss,
    ).toBeNear(0.1 * 0.028349523125, {
      relative: 1e-12, // exact factor, binary rounding
    });
  });

  test('readShop reads prices as they are typed, whatever their unit cell says', () => {
    const { shop, problems } = readShop([
      ['Labor rate', 31.5, 'EUR per hour'],
      ['Currency', 'eur', ''],
      ['Break quantities', ' 10; 40 ', ''],
      ['Overhead', '12 %', ''],
    ]);
    expect(problems).toEqual([]);
    expect(shop).toMatchObject({
      laborRate: 31.5,
      currency: 'EUR',
      breakQuantities: '10; 40',
      overheadShare: 0.12,
    });
  });

  test.each([
    ['Labor rate', -1, 'labor rate must be at least 0, got -1'],
    ['Target margin', 1, 'target margin must be less than 1, got 1'],
    ['Quote holds for (days)', 2.5, 'quote holds for (days) must be a whole number, got 2.5'],
    [
      'Break quantities',
      '25, x',
      'break quantities must be whole numbers of pieces such as 25, 50, 100, got "25, x"',
    ],
  ])('readShop refuses %s of %s', (label, value, expected) => {
    const { problems } = readShop([[label, value, '']]);
    expect(problems.map(({ error }) => sentence(error))).toEqual([expected]);
  });

  test('a shop can keep its book in every currency that amounts are written in, and no other', () => {
    expect(SETTINGS.currency.choices).toEqual(Object.keys(CURRENCIES));
    const { problems } = readShop([['Currency', 'XYZ', '']]);
    expect(problems).toHaveLength(1);
  });

  test('readShop lists a refused value by its row and goes on with the default', () => {
    const cells: Cells = [
      ['Setting', 'Value', 'Unit'],
      ['Elevation', 20000, 'ft'],
      ['Units', 'imperial', ''],
      ['Cook temperature', 350, 'fl oz'],
      ['Overpour', 'some', ''],
      ['Cup fill', '', 'fl oz'],
    ];
    const { shop, problems } = readShop(cells);
    expect(
      problems.map(({ sheet: where, row, heading, error }) => [
        where,
        row,
        heading,
        sentence(error),
      ]),
    ).toEqual([
      ['Shop', 3, 'Units', 'units must be one of US, metric, got "imperial"'],
      ['Shop', 2, 'Elevation', 'elevation must be at most 16404.2 ft, got 20000 ft'],
      ['Shop', 5, 'Overpour', 'overpour must be a number, got "some"'],
      [
        'Shop',
        4,
        'Cook temperature',
        'unit of cook temperature must be a unit such as °F, got "fl oz"',
      ],
    ]);
    expect([shop.elevation, shop.units, shop.cookTemperature, shop.overpour, shop.cupFill]).toEqual(
      [0, 'US', 177, 0.05, 1.774e-4],
    );
  });
});

describe('settingRows', () => {
  test('settingRows says the limits in the unit of the row', () => {
    const about = (label: string) =>
      settingRows('US', bookNotes().settings).find(({ setting }) => setting.label === label)
        ?.cells[3];
    expect(about('Cook temperature')).toBe(
      'The plastisol is cooked through at this. The SDS and the maker’s sheet come first. At least 302 °F. At most 374 °F.',
    );
    expect(about('Confidence for pieces')).toBe(
      'Chance of ending with enough good pieces. Greater than 50 %. Less than 100 %.',
    );
  });

  test('settingRows puts the figures that fill themselves below their setting, without a value', () => {
    const rows = settingRows('metric', bookNotes().settings);
    const place = rows.findIndex(({ key }) => key === 'topTarget');
    expect(rows.slice(place + 1, place + 3).map(({ cells }) => cells.slice(0, 3))).toEqual([
      ['Boiling point here', '', '°C'],
      ['Mold top must read', '', '°C'],
    ]);
    expect(rows[place + 1]?.cells[3]).toBe('Of water at the elevation above. Fills itself.');
  });

  test('what stands in a row that fills itself is never read back', () => {
    const { shop, problems } = readShop([
      ['Boiling point here', '#NAME?', '°F'],
      ['Mold top must read', 'typed', 'fl oz'],
    ]);
    expect(problems).toEqual([]);
    expect(shop).toEqual(readShop([]).shop);
  });

  test('missingSettings names only those without a row, whatever the case', () => {
    const rows = settingRows('US', bookNotes().settings);
    expect(missingSettings(sheet('US'), rows)).toEqual([]);
    const fewer = sheet('US').filter(([label]) => label !== 'Overpour');
    expect(missingSettings(fewer, rows).map(({ key }) => key)).toEqual(['overpour']);
    expect(missingSettings([...fewer, ['OVERPOUR', 0.1]], rows)).toEqual([]);
  });
});

describe('settingCells', () => {
  test('settingCells changes a setting that holds its default, in the unit of its row', () => {
    const values = settingCells(
      [
        ['Setting', 'Value', 'Unit'],
        ['Elevation', 0, 'ft'],
        ['Shop name', '', ''],
      ],
      {
        elevation: 304.8,
        shopName: 'Ours',
      },
    );
    expect(values).toEqual([1000, 'Ours']);
  });

  test('settingCells leaves what the user changed, what is refused and what is not asked for', () => {
    const cells: Cells = [
      ['Setting', 'Value', 'Unit'],
      ['Elevation', 500, 'ft'],
      ['Room temperature', 'warm', '°F'],
      ['Overpour', 0.07, ''],
      ['mine', 3, ''],
    ];
    expect(settingCells(cells, { elevation: 304.8, roomTemperature: 20 })).toEqual([
      500,
      'warm',
      0.07,
      3,
    ]);
  });
});
