import { describe, expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { findOrder } from '../../../shared/plan/facts/findOrder.ts';
import { fixedRun } from '../../../shared/plan/heat/fixedRun.ts';
import { type HeatFigures, usualFigures } from '../../../shared/plan/heat/heatFigures.ts';
import { planRow } from '../../../shared/plan/planOrder.ts';
import { drawnAnswers } from '../../../shared/plan/uncertainty/drawnAnswers.ts';
import { DEMO, type DemoChanges, demoBook } from '../../book/demoBook.ts';

/** A mold warm enough to pour, cool enough that its one layer sets. */
const WARM: DemoChanges = {
  shop: { topTarget: -30 },
  plates: DEMO.plates.map((plate) => ({ ...plate, lowestSetting: undefined })),
};

/** The answers of an order's plan with some of its figures changed. */
function answersWith(line: number, change: Partial<HeatFigures>, changes: DemoChanges = WARM) {
  const index = indexBook(demoBook(changes));
  const row = index.book.orders[line] ?? { row: 0, record: {} };
  const plan = planRow(index, row);
  const found = findOrder(index, row);
  if (plan.kind === 'missing' || found.kind === 'missing') throw new Error('the demo is whole');
  const { facts } = found;
  const { shop } = index.book;
  const usual = usualFigures(facts.plate, shop);
  const run = { ...fixedRun(facts, plan, shop), usual, figures: { ...usual, ...change } };
  return { plan, answers: drawnAnswers(facts, shop, { ...run, moments: [0, 600, 1200] }) };
}

function withOwnSet(setTemperature: number): DemoChanges {
  const materials = DEMO.materials.map((one) =>
    one.kind === 'plastisol' ? { ...one, setTemperature } : one,
  );
  return { ...WARM, materials };
}

describe('drawnAnswers', () => {
  test('with the plan’s own figures are the plan’s own answers', () => {
    const { plan, answers } = answersWith(0, {}, {});
    if (plan.plate.kind === 'unreachable') throw new Error(plan.plate.because);
    // Quick against exact: a second or two of the minutes, 2 % of a layer’s times.
    expect(answers.heatUp).toBeNear(plan.plate.heatUp, { absolute: 2 });
    expect(answers.plateau).toBeNear(plan.plate.plateau, { absolute: 0.05 });
    expect(answers.cupTime).toBeNear(plan.cupTime, { relative: 1e-9 }); // rounding only
    plan.layers.slice(1).forEach(({ joint, window }, index) => {
      const own = answers.layers[index + 1]?.onBelow;
      // 2 % of the fall from the pour to the surface below
      expect(own?.contact).toBeNear(joint?.contactTemperature ?? 0, { absolute: 0.8 });
      const earliest = window?.kind === 'none' ? Number.NaN : (window?.earliest ?? Number.NaN);
      expect(own?.earliest).toBeNear(earliest, { relative: 0.03 });
    });
  });

  test('a cup’s time goes with the heat it holds, and against the heat it loses', () => {
    const { cupTime } = answersWith(2, {}).answers;
    const changed = (change: Partial<HeatFigures>) => answersWith(2, change).answers.cupTime;
    // Rounding only, both times.
    expect(changed({ specificHeat: 2280 })).toBeNear(1.2 * cupTime, { relative: 1e-9 });
    expect(changed({ cupCoefficient: 34 })).toBeNear(0.5 * cupTime, { relative: 1e-9 });
  });

  test('a set temperature from the shop’s own pucks moves by three tenths of the drawn change', () => {
    const open = (changes: DemoChanges, change: Partial<HeatFigures> = {}) =>
      answersWith(2, change, changes).answers.layers[0]?.open ?? Number.NaN;
    const raised = open(withOwnSet(90), { setTemperature: 102 });
    // 10 K above the usual 92; rounding only.
    expect(raised).toBeNear(open(withOwnSet(93)), { relative: 1e-9 });
    expect(raised).toBeLessThan(open(withOwnSet(90)));
    expect(open(WARM, { setTemperature: 102 })).toBeNear(open(withOwnSet(102)), { relative: 1e-9 });
  });

  test('a plate that turns out too weak never gets there; its mold is poured at the target all the same', () => {
    const cold = answersWith(0, { dialOffset: -40 }, {}).answers;
    expect(cold.heatUp).toBe(Number.POSITIVE_INFINITY);
    const usual = answersWith(0, {}, {}).answers;
    const contact = usual.layers[1]?.onBelow?.contact ?? Number.NaN;
    // A mold held at its target instead of climbing some 2 K while the first layer waits.
    expect(cold.layers[1]?.onBelow?.contact).toBeNear(contact, { absolute: 1.5 });
    expect(cold.tops[2]).toBeLessThan((usual.tops[2] ?? 0) - 20);
  });
});
