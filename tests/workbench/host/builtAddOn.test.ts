import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readAddOn } from '../../../workbench/host/addOn.ts';
import { folder, openFixture } from './fixture.ts';

const DIST = join(import.meta.dirname, '..', '..', '..', 'dist');

// The built add-on is there after a build; what it does is told in its own tests.
test.skipIf(!existsSync(join(DIST, 'Code.js')))(
  'the built add-on opens, offers its menu and computes in cells and files',
  async () => {
    const addOn = readAddOn(DIST);
    const book = join(folder(), 'built.xlsx');
    const { host } = await openFixture({ dist: DIST, book });
    const called = host.menus().flatMap((menu) => menu.items.flatMap((item) => item.run ?? []));
    expect(called.length).toBeGreaterThan(0);
    for (const name of called) expect(addOn.functions).toContain(name);
    expect(addOn.sheetFunctions.every((name) => /^POUR_[A-Z_]+$/.test(name))).toBe(true);
    host.type('Sheet1', 'A1', '0');
    host.type('Sheet1', 'A2', '=POUR_BOIL(A1,"metric")');
    await host.settled();
    const [[boiling]] = host.values('Sheet1', 'A2') as [[number]];
    // Standard atmosphere at sea level: 99.97 degC (IAPWS-IF97).
    expect(boiling).toBeNear(99.97, { absolute: 0.01 });
    await host.save();
    const again = await openFixture({ dist: DIST, book });
    expect(again.host.values('Sheet1', 'A2')).toEqual([[boiling]]);
  },
);

test.skipIf(!existsSync(join(DIST, 'Code.js')))(
  'a list goes in whole and a table with headings spills, down and to the right',
  async () => {
    const { host } = await openFixture({ dist: DIST });
    for (const row of [1, 2]) host.type('Sheet1', `A${row}`, '3');
    host.type('Sheet1', 'C1', '=POUR_WINDOW(A1:A9,60,165,,,,,"metric")');
    host.type('Sheet1', 'C6', '=POUR_WINDOW({3;3},60,{165;165},60,,,,"metric")');
    await host.settled();
    expect(host.values('Sheet1', 'C1:E1')).toEqual([['layer', 'poured (s)', 'open time (s)']]);
    expect(host.values('Sheet1', 'I2:I3')).toEqual([
      ['bonds'],
      ['top layer: the times are for one more pour as hot'],
    ]);
    expect(host.values('Sheet1', 'C7:D8')).toEqual([
      [1, 0],
      [2, 60],
    ]);
    host.type('Sheet1', 'A2', '-1');
    await host.settled();
    expect(host.values('Sheet1', 'C1:C2')).toEqual([
      ['layer thickness 2 must be greater than 0 mm, got -1 mm'],
      [''],
    ]);
  },
);
