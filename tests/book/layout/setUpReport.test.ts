import { describe, expect, test } from 'vitest';
import { setUpReport } from '../../../shared/book/layout/setUpReport.ts';

describe('setUpReport', () => {
  test('setUpReport says so when nothing was to be done', () => {
    expect(setUpReport([])).toBe('Everything was in place already. Nothing was changed.');
  });

  test('setUpReport groups what it did, one sentence a kind', () => {
    expect(
      setUpReport([
        { kind: 'created', sheet: 'Molds' },
        { kind: 'column', sheet: 'Plates', heading: 'Warm-up' },
        { kind: 'column', sheet: 'Molds', heading: 'Finish' },
        { kind: 'column', sheet: 'Molds', heading: 'Owned' },
        { kind: 'setting', label: 'Overpour' },
        { kind: 'units', sheet: 'Doses', system: 'metric' },
        { kind: 'units', sheet: 'Plates', system: 'metric' },
        { kind: 'renamed', from: 'Forms', sheet: 'Molds' },
        { kind: 'formula', sheet: 'Orders', heading: 'Cups' },
        { kind: 'layout', sheet: 'Shop' },
      ]),
    ).toBe(
      'Gave the sheet Forms its name Molds back. Created Molds. Added column Warm-up to Plates. Added columns Finish and Owned to Molds. Wrote metric units into the headings of Doses and Plates, which had no rows yet. Added to Shop: Overpour. Wrote the formulas of Cups in Orders. Brought formats, notes, drop-downs and protection up to date in Shop. Nothing else changed.',
    );
  });

  test('setUpReport tells what it left alone, also when nothing was changed', () => {
    expect(setUpReport([{ kind: 'left', because: 'In Orders, Cups holds typed values.' }])).toBe(
      'Everything was in place already. Nothing was changed. In Orders, Cups holds typed values.',
    );
  });
});
