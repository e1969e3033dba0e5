import { describe, expect, test } from 'vitest';
import { trialResiduals } from '../../../shared/pictures/heatTrial/trialResiduals.ts';
import { TRIAL } from '../pictureData.ts';

describe('trialResiduals', () => {
  test('are reading less curve, straight between its points', () => {
    const curve = [
      { seconds: 0, top: 20 },
      { seconds: 100, top: 40 },
    ];
    const readings = [
      { trial: 'T-1', seconds: 25, top: 27 },
      { trial: 'T-1', seconds: 0, top: 18 },
      { trial: 'T-1', seconds: 101, top: 60 },
    ];
    const residuals = trialResiduals({ ...TRIAL, curve, readings });
    expect(residuals.map(({ residual }) => residual)).toEqual([2, -2]);
  });
});
