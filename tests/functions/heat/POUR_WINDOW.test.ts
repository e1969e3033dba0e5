import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { POUR_WINDOW } from '../../../shared/functions/heat/POUR_WINDOW.ts';
import { bondWindow } from '../../../shared/heat/bondWindow.ts';
import { openTime } from '../../../shared/heat/openTime.ts';
import { AIR_STATES } from '../../../shared/heat/solver/airStates.ts';
import { solveLayers } from '../../../shared/heat/solver/solveLayers.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';

const TOP = 'top layer: the times are for one more pour as hot';

function column(...cells: readonly (string | number)[]): CellArgument {
  return cells.map((cell) => [cell]);
}

/** Rows below the headings, metric. */
function rows(...args: readonly CellArgument[]): readonly (readonly (string | number)[])[] {
  const all = [...args, ...Array<string>(7 - args.length).fill(''), 'metric'];
  const answer = runFunction(POUR_WINDOW, all);
  if (!Array.isArray(answer)) throw new Error(String(answer));
  return answer.slice(1);
}

function figure(answer: { readonly kind: string; readonly seconds?: number }): string | number {
  return answer.seconds ?? answer.kind;
}

describe('POUR_WINDOW', () => {
  test('one layer is the exact series', () => {
    const molds = fc.double({ min: 45, max: 90, noNaN: true });
    const thicknesses = fc.double({ min: 1.5, max: 8, noNaN: true });
    fc.assert(
      fc.property(molds, thicknesses, (moldTop, millimeters) => {
        const [row = []] = rows(millimeters, moldTop, 165);
        const layer = {
          thickness: millimeters / 1000,
          startTemperature: 158,
          moldTemperature: moldTop,
        };
        const { earliest, latest } = bondWindow(layer, { pourTemperature: 158 });
        const exact = [openTime(layer), earliest, latest].map(figure);
        exact.forEach((expected, index) => {
          const shown = row[index + 2] ?? '';
          // Followed for 20 minutes only; grid and step leave 0.5 %.
          if (typeof shown === 'number' && typeof expected === 'number')
            expect(shown).toBeNear(expected, { relative: 5e-3 });
          else if (typeof expected === 'string') expect(shown).toBe(expected);
          else expect(expected).toBeGreaterThan(1190);
        });
      }),
      { numRuns: 40 },
    );
  });

  test('a planned stack is the solver’s, row by row', () => {
    const pours = [
      { time: 0, thickness: 0.003, temperature: 158 },
      { time: 60, thickness: 0.002, temperature: 163 },
      { time: 180, thickness: 0.004, temperature: 168 },
    ];
    const { layers } = solveLayers({
      pours,
      mold: 65,
      air: AIR_STATES.drafty,
      bondTemperature: 118,
      shapeFactor: 1.2,
    });
    const shown = rows(
      column(3, 2, 4),
      65,
      column(165, 170, 175),
      column(60, 120),
      118,
      1.2,
      'drafty',
    );
    layers.forEach((layer, index) => {
      const expected = [
        index + 1,
        layer.poured,
        figure(layer.open),
        figure(layer.earliest),
        figure(layer.latest),
        layer.joint?.contactTemperature ?? '',
      ];
      const row = shown[index] ?? [];
      expected.forEach((one, place) => {
        // Inches and degrees to and fro.
        if (typeof one === 'number') expect(row[place]).toBeNear(one, { absolute: 1e-6 });
        else expect(row[place]).toBe(one);
      });
    });
  });

  test.each([
    { what: 'as soon as firm', args: [column(3, 3), 60, 165], verdict: 'bonds' },
    { what: 'in time', args: [column(3, 3), 60, 165, 60], verdict: 'bonds' },
    {
      what: 'too early',
      args: [column(3, 3), 60, 165, 10],
      verdict: 'too early: not firm yet, colors mix',
    },
    { what: 'too late', args: [column(3, 3), 60, 165, 120], verdict: 'too late: peels' },
    {
      what: 'a cold cup on a cold mold',
      args: [column(3, 3), 40, column(165, 125)],
      verdict: 'no good moment: it is too cool to bond before it is firm; pour the next hotter',
    },
    {
      what: 'a cold cup onto one as cold',
      args: [column(3, 3), 40, column(100, 110), 5],
      verdict: 'peels at any time: pour the next hotter',
    },
    {
      what: 'a mold too hot',
      args: [column(3, 3), 140, 165, 60],
      verdict: 'never firm on so hot a mold: bonds, but colors mix',
    },
  ])('$what: $verdict', ({ args, verdict }) => {
    const [first, second] = rows(...args);
    expect(first?.[6]).toBe(verdict);
    expect(second?.[6]).toBe(TOP);
  });

  test('without gaps a layer waits in vain on one that never gets firm', () => {
    const shown = rows(column(3, 3, 3), 140, 165);
    expect(shown[0]?.[6]).toBe('never firm on so hot a mold');
    const waits = 'not poured: layer 1 never gets firm; give the gaps, or a cooler mold';
    expect(shown.slice(1)).toEqual([
      [2, '', '', '', '', '', waits],
      [3, '', '', '', '', '', waits],
    ]);
  });

  test('the earliest moment of a plan without gaps can be typed in as its gaps', () => {
    const free = rows(column(3, 3, 3), 60, 165);
    const gaps = free.slice(0, 2).map((row) => Math.round(Number(row[3])));
    const typed = rows(column(3, 3, 3), 60, 165, column(...gaps));
    expect(typed.map((row) => row[6])).toEqual(['bonds', 'bonds', TOP]);
  });

  test('a second early is not too early', () => {
    const earliest = Number(rows(column(3, 3), 60, 165)[0]?.[3]);
    const verdict = (gap: number) => rows(column(3, 3), 60, 165, gap)[0]?.[6];
    expect(verdict(earliest - 0.9)).toBe('bonds');
    expect(verdict(earliest - 1.1)).toBe('too early: not firm yet, colors mix');
  });

  test('no more layers than a mold has', () => {
    expect(runFunction(POUR_WINDOW, [column(...Array<number>(13).fill(3)), 60, 165])).toBe(
      'number of thicknesses must be at most 12, got 13',
    );
  });
});
