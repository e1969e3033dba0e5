import { describe, expect, test } from 'vitest';
import { coolToDemold } from '../../../shared/heat/coolToDemold.ts';
import { coolingLoss } from '../../../shared/heat/heatUp/coolingLoss.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

const BOX = { profile: 'box' as const, cavityWidth: 0.012, cavityDepth: 0.006 };

function coolTime(changes: DemoChanges = {}, cavity: object = BOX) {
  const molds = withChange(DEMO.molds, 0, { cavityLength: undefined, ...cavity });
  const plan = planOrder(demoBook({ molds, ...changes }), '2043');
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  const { plate, coolTime: seconds } = plan;
  return { seconds, plateau: plate.kind === 'reachable' ? plate.plateau : Number.NaN };
}

function byHand(
  moldStart: number,
  shapeFactor: number,
  lossShare = 1,
  castingDepth = 0.003,
): number {
  const block = { length: 0.178, width: 0.14, height: 0.025 };
  const lossCoefficient = coolingLoss(
    { mold: { ...block, finish: 'machined', lossShare }, roomTemperature: 22 },
    { from: moldStart, to: 60 },
  );
  const cooling = coolToDemold({
    mold: { ...block, contactConductance: 0, lossCoefficient, roomTemperature: 22 },
    moldStart,
    castingStart: 165 - 7,
    castingDepth,
    shapeFactor,
    demoldTemperature: 60,
  });
  return cooling.kind === 'reached' ? cooling.seconds : Number.NaN;
}

describe('the cool-down of a plan', () => {
  test('takes a cavity by volume over wetted metal and the factor of its shape', () => {
    const { seconds, plateau } = coolTime();
    // 12 x 6 mm hold 72 mm2 over 24 mm of wall; a box twice as wide as deep, open: aspect 1, factor 1.56.
    expect(seconds).toBeNear(byHand(plateau, 1.56), { relative: 1e-9 });
    expect(seconds).toBeGreaterThan(byHand(plateau, 1));
  });

  test('a closed cavity has metal all around', () => {
    const closed = { ...BOX, kind: 'two-piece' as const, cavityWidth: 0.012, cavityDepth: 0.006 };
    const { seconds, plateau } = coolTime({}, closed);
    // 72 mm2 over 36 mm of wall; half as deep as wide, 1 + 0.56 x 2 / (0.5 + 2).
    expect(seconds).toBeNear(byHand(plateau, 1.448, 1, 0.002), { relative: 1e-9 });
  });

  test('a mold that was found to lose less cools more slowly', () => {
    const plates = withChange(DEMO.plates, 0, { heatLoss: 0.8 });
    const { seconds, plateau } = coolTime({ plates });
    expect(seconds).toBeNear(byHand(plateau, 1.56, 0.8), { relative: 1e-9 });
    expect(seconds).toBeGreaterThan(1.1 * coolTime().seconds);
  });
});
