import { describe, expect, test } from 'vitest';
import { indexBook, nameKey } from '../../shared/book/bookIndex.ts';
import { planInDetail } from '../../shared/trials/planInDetail.ts';
import type { HeatTrialRow } from '../../shared/trials/trialBook.ts';
import { demoBook } from '../book/demoBook.ts';

const SEED = 7;

/** What stands beside the curve of order 2041, two molds from a cold plate without a lid, after one trial. */
function readingsBeside(change: Partial<HeatTrialRow['record']>) {
  const index = indexBook(demoBook());
  const order = index.orders.get(nameKey('2041'));
  if (order === undefined) throw new Error('no order');
  const bare = planInDetail(index, order, [], SEED);
  if (bare.kind !== 'plan' || bare.plate.kind !== 'reachable') throw new Error('no plan');
  const { mold, plate } = bare;
  const record = {
    trial: 'H-1',
    mold,
    plate: plate.plate,
    setting: plate.setting,
    moldsOnPlate: 2,
    minutes: 600,
    topTemperature: 71,
    ...change,
  };
  const plan = planInDetail(index, order, [{ row: 2, record }], SEED);
  return plan.kind === 'plan' ? plan.detail?.readings : undefined;
}

describe('planInDetail', () => {
  test('shows a reading of the same molds, heated as the plan heats them', () => {
    expect(readingsBeside({})).toEqual([{ trial: 'H-1', seconds: 600, top: 71 }]);
  });

  test.each([
    { moldsOnPlate: 1 },
    { start: 'hot' as const },
    { lid: 'lid' as const },
    { setting: 160 },
    { mold: 'Paddle 3 in' },
  ])('leaves out one with %o', (change) => {
    expect(readingsBeside(change)).toEqual([]);
  });
});
