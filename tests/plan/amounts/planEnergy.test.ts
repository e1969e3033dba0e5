import { describe, expect, test } from 'vitest';
import { planEnergy } from '../../../shared/plan/amounts/planEnergy.ts';
import type { PlateOutcome } from '../../../shared/plan/heat/planPlate.ts';
import { topTargetOf } from '../../../shared/plan/heat/plateHeat.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import type { LayerPlan } from '../../../shared/plan/planTypes.ts';
import { DEMO, demoBook, withChange } from '../../book/demoBook.ts';

const { shop } = demoBook({
  shop: { readyWait: 300, demoldTemperature: 60, roomTemperature: 20, microwavePower: 1000 },
});
const OUTCOME = { energy: { heatUp: 1e6, holding: 500 } } as unknown as PlateOutcome; // nothing else of it is read
const LAYERS = [
  { run: { firstAt: 0, lastAt: 80, passTime: 100, stops: 0 } },
  { run: { firstAt: 200, lastAt: 280, passTime: 100, stops: 0 } },
] as unknown as readonly LayerPlan[]; // as above

describe('planEnergy', () => {
  test('adds heat-up, holding through every round, heating again between rounds, and the oven', () => {
    const again = (topTargetOf(shop) - 60) / (topTargetOf(shop) - 20);
    // 1 MJ + 500 W x (300 s + 3 x 300 s) + 2 x 1 MJ x share of the rise; 600 s x 1000 W / 0.6
    expect(
      planEnergy({ outcome: OUTCOME, layers: LAYERS, rounds: 3, ovenTime: 600 }, shop),
    ).toEqual({
      plate: 1e6 + 600_000 + 2e6 * again,
      oven: 1e6,
    });
    expect(again).toBeNear(0.507, { absolute: 0.001 }); // water boils at 98.1 °C at 550 m: (101.1 - 60) / (101.1 - 20)
  });

  test('one round is never heated again', () => {
    const { plate } = planEnergy(
      { outcome: OUTCOME, layers: LAYERS, rounds: 1, ovenTime: 0 },
      shop,
    );
    expect(plate).toBe(1e6 + 500 * 600);
  });

  test('a plan carries both, a little less than the plate’s watts over the time it is on', () => {
    const plan = planOrder(demoBook(), '2041');
    if (plan.kind === 'missing' || plan.plate.kind !== 'reachable') throw new Error('no plan');
    const last = plan.layers[plan.layers.length - 1]?.run;
    const round = (last?.firstAt ?? 0) + (last?.passTime ?? 0);
    const { rounds } = plan.pieces;
    const longest = rounds * (plan.plate.heatUp + round) + plan.plate.readyWait;
    expect(plan.energy.plate).toBeLessThan(1500 * longest);
    expect(plan.energy.plate).toBeGreaterThan(0.2 * 1500 * plan.plate.heatUp);
    expect(plan.energy.oven).toBeGreaterThan(0);
  });

  test('a plate that never gets the mold hot has no figure of its own', () => {
    const plates = withChange(DEMO.plates, 0, { highestSetting: 105 });
    const plan = planOrder(demoBook({ plates }), '2041');
    if (plan.kind === 'missing') throw new Error('no plan');
    expect(Object.keys(plan.energy)).toEqual(['oven']);
  });
});
