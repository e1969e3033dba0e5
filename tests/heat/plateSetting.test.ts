import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moldHeatUp } from '../../shared/heat/moldHeatUp.ts';
import { plateSetting } from '../../shared/heat/plateSetting.ts';
import { errorText } from './errorText.ts';

const INCH = 0.0254;
const MOLD = { length: 6 * INCH, width: 4 * INCH, height: 1.25 * INCH, roomTemperature: 22 };
const WANTED = { mold: MOLD, target: 100, margin: 5, lowestSetting: 50, highestSetting: 200 };

describe('plateSetting', () => {
  test('a mold on that setting settles at target plus margin', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 140, noNaN: true }),
        fc.double({ min: 0, max: 15, noNaN: true }),
        fc.double({ min: 50, max: 1000, noNaN: true }),
        (target, margin, contactConductance) => {
          const mold = { ...MOLD, contactConductance };
          const found = plateSetting({ ...WANTED, mold, target, margin, highestSetting: 400 });
          const setting = found.kind === 'setting' ? found.setting : Number.NaN;
          fc.pre(setting > 50);
          const { plateau } = moldHeatUp({ mold, plateSetting: setting }, 0);
          // Rounding only.
          expect(plateau).toBeNear(target + margin, { absolute: 1e-9 });
        },
      ),
    );
  });

  test('near 270 °F on the dial for a mold top a few degrees above boiling (TRADE)', () => {
    const found = plateSetting({ ...WANTED, margin: 8 });
    // 132 °C in the shop; dials are off by 10 K and more.
    expect(found.kind === 'setting' ? found.setting : Number.NaN).toBeNear(132, { absolute: 10 });
  });

  test('never asks for less than the dial has', () => {
    const found = plateSetting({ ...WANTED, target: 40, margin: 0, lowestSetting: 90 });
    const plateau = moldHeatUp({ mold: MOLD, plateSetting: 90 }, 0).plateau;
    expect(found).toEqual({ kind: 'setting', setting: 90, plateau });
  });

  test('past the dial it says what is needed and what would help', () => {
    const found = plateSetting({ ...WANTED, highestSetting: 120 });
    const needed = plateSetting({ ...WANTED, highestSetting: 400 });
    expect(found).toMatchObject({
      kind: 'unreachable',
      because: 'setting above the range of the plate',
      settingNeeded: needed.kind === 'setting' ? needed.setting : Number.NaN,
      highestSetting: 120,
      plateau: moldHeatUp({ mold: MOLD, plateSetting: 120 }, 0).plateau,
    });
    const kinds = found.kind === 'unreachable' ? found.remedies.map(({ kind }) => kind) : [];
    expect(kinds).toEqual(['higher setting', 'lid', 'flatter contact']);
  });

  test('on an insulating board only contact can help', () => {
    const found = plateSetting({ ...WANTED, mold: { ...MOLD, contactConductance: 0 } });
    const remedies = found.kind === 'unreachable' ? found.remedies : [];
    expect(found).toMatchObject({ kind: 'unreachable', settingNeeded: undefined, plateau: 22 });
    expect(remedies.map(({ kind }) => kind)).toEqual(['flatter contact']);
  });

  test('bad figures are named', () => {
    expect(errorText(() => plateSetting({ ...WANTED, target: 20 }))).toBe(
      'target temperature must be greater than room temperature (22 °C), got 20 °C',
    );
    expect(errorText(() => plateSetting({ ...WANTED, margin: -1 }))).toBe(
      'margin must be at least 0 °C, got -1 °C',
    );
    expect(errorText(() => plateSetting({ ...WANTED, lowestSetting: 210 }))).toBe(
      'highest setting must be greater than lowest setting (210 °C), got 200 °C',
    );
  });
});

test('temperatures that are no numbers are named', () => {
  expect(errorText(() => plateSetting({ ...WANTED, target: Number.NaN }))).toBe(
    'target temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => plateSetting({ ...WANTED, lowestSetting: Number.NaN }))).toBe(
    'lowest setting must be a number (°C), got not a number',
  );
  expect(errorText(() => plateSetting({ ...WANTED, highestSetting: Number.NaN }))).toBe(
    'highest setting must be a number (°C), got not a number',
  );
});
