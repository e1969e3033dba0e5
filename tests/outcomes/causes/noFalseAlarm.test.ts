import fc from 'fast-check';
import { expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { DEFECT_KEYS } from '../../../shared/book/tables/pourLog.ts';
import { diagnoseRow } from '../../../shared/outcomes/causes/diagnoseRow.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../../shared/plan/planTypes.ts';
import { evenReal } from '../../evenReal.ts';
import { DEMO } from '../demoRound.ts';

/** Orders in open molds: two and three layers, three molds, two plates. */
const PLANS = ['1002', '1003', '1006', '1007', '1010'].map((order) => {
  const plan = planOrder(DEMO, order);
  if (plan.kind === 'missing') throw new Error(JSON.stringify(plan.missing));
  if (plan.plate.kind === 'unreachable') throw new Error(plan.plate.because);
  return { ...plan, plate: plan.plate };
});

/** A layer follows at most so much later than it might [s]: far beyond, the mold has climbed past the plan’s own moments. */
const LONGEST = 120;

/** Where within what is allowed a reading lies, 0 to 1. */
const place = evenReal(0, 1);

function gapOf({ layers }: Pick<OrderPlan, 'layers'>, above: number, share: number): number {
  const window = layers[above]?.window;
  if (window === undefined || window.kind === 'none') throw new Error('no window');
  const last = window.earliest + LONGEST;
  const latest = window.kind === 'between' ? Math.min(last, window.latest) : last;
  return window.earliest + share * (latest - window.earliest);
}

/** A round of a plan, poured inside it: mold top and cups within 3 K of it, gaps inside its windows. */
const insideRound = fc
  .record({
    plan: fc.constantFrom(...PLANS),
    top: place,
    cups: fc.tuple(place, place, place),
    gaps: fc.tuple(place, place),
  })
  .map(({ plan, top, cups, gaps }) => {
    const [pour1, pour2, pour3] = plan.layers.map(
      ({ pourTemperature }, layer) => pourTemperature - 3 + 6 * (cups[layer] ?? 0),
    );
    return {
      run: 'R-1',
      order: plan.order,
      mold: plan.mold,
      pattern: plan.pattern,
      version: plan.version,
      moldTop: plan.plate.topTarget - 3 + 6 * top,
      pour1,
      pour2,
      pour3,
      gap12: gapOf(plan, 1, gaps[0]),
      gap23: plan.layers.length > 2 ? gapOf(plan, 2, gaps[1]) : undefined,
      poured: 12,
      good: 2,
      ...Object.fromEntries(DEFECT_KEYS.map((key) => [key, 1])),
    };
  });

test('a round poured inside its plan is not blamed on heat, whatever came out', () => {
  const index = indexBook(DEMO);
  fc.assert(
    fc.property(insideRound, (record) => {
      const found = diagnoseRow(index, record);
      if (found.kind === 'no plan') throw new Error(found.because);
      expect(found.diagnoses.flatMap(({ causes }) => causes)).toEqual([]);
      expect(found.diagnoses).toHaveLength(DEFECT_KEYS.length);
    }),
    { numRuns: 100 },
  );
});
