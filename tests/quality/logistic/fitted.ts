import { type LogisticCurve, logisticFit } from '../../../shared/quality/logistic/logisticFit.ts';
import type { LogisticMethod } from '../../../shared/quality/logistic/logisticLogLikelihood.ts';
import type { LogisticPoint } from '../../../shared/quality/logistic/logisticPoint.ts';

/** The curve of points that have one. */
export function fitted(points: readonly LogisticPoint[], method: LogisticMethod): LogisticCurve {
  const fit = logisticFit(points, method);
  if (fit.kind === 'no fit') throw new Error(fit.because);
  return fit;
}
