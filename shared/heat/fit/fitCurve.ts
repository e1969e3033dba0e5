import { InputError } from '../../errors/InputError.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { invertMatrix } from './invertMatrix.ts';
import {
  type Curve,
  curveSlopes,
  dampedStep,
  dot,
  type NormalEquations,
  normalEquations,
} from './normalEquations.ts';

export interface CurveData {
  /** Values of the curve at every reading, in the readings' order, for given parameters. */
  readonly curve: Curve;
  readonly readings: readonly number[];
  /** First guess; one per parameter, fewer than readings */
  readonly start: readonly number[];
  /** Of the differences that stand for derivatives, share of a parameter or of its first guess, > 0; wide for a curve that is itself rounded */
  readonly derivativeStep?: number;
  /** Ends when no parameter moves by more than this share, > 0 */
  readonly precision?: number;
}

export type CurveFit =
  | {
      readonly kind: 'fitted';
      readonly parameters: readonly number[];
      readonly standardErrors: readonly number[];
      /** Standard errors for readings that scatter by 1 */
      readonly errorsPerDeviation: readonly number[];
      /** Square, ones on its diagonal */
      readonly correlation: readonly (readonly number[])[];
      /** Reading less curve */
      readonly residuals: readonly number[];
      readonly sumOfSquares: number;
      /** Square root of the sum over readings less parameters */
      readonly residualDeviation: number;
    }
  | {
      readonly kind: 'no fit';
      readonly because:
        | 'parameters cannot be told apart'
        | 'no curve at the first guess'
        | 'no end in sight';
    };

const MOST_STEPS = 200;
const LARGEST_DAMPING = 1e12;
const SMALLEST_DAMPING = 1e-12;

/**
 * Parameters of a curve by nonlinear least squares: the method of Levenberg and Marquardt.
 *
 * (S + damping I) z = D J'r with S = D J'J D, D the inverse lengths of J's columns; errors from s^2 (J'J)^-1.
 * Finds the minimum downhill of the first guess, which need not be the lowest. Errors hold near it, for readings that
 * scatter alike and independently.
 *
 * @throws InputError on fewer readings than one more than parameters, or one that is not a number
 * @source MARQUARDT; errors BATESWATTS, section 2.3
 */
export function fitCurve(data: CurveData): CurveFit {
  const { curve, readings, derivativeStep = 6e-6, precision = 1e-10 } = data;
  requireNumber(readings.length, 'readings', { atLeast: data.start.length + 1 });
  for (const reading of readings) requireNumber(reading, 'reading');
  let point = pointAt(data, data.start);
  if (!Number.isFinite(point.sum))
    return { kind: 'no fit', because: 'no curve at the first guess' };
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const widths = sizes(data, point.parameters).map((size) => derivativeStep * size);
    const slopes = curveSlopes(curve, point.parameters, widths);
    const equations = normalEquations(slopes, point.residuals);
    const next = downhill(data, point, equations, damping);
    if (next.moved <= precision) return finished(next.point, equations);
    ({ point, damping } = next);
  }
  return { kind: 'no fit', because: 'no end in sight' };
}

interface FitPoint {
  readonly parameters: readonly number[];
  readonly residuals: readonly number[];
  readonly sum: number;
}

function pointAt({ curve, readings }: CurveData, parameters: readonly number[]): FitPoint {
  const values = curve(parameters);
  if (values.length !== readings.length)
    throw new InputError({
      field: 'values of the curve',
      rule: { kind: 'at least', limit: readings.length },
      value: values.length,
    });
  const residuals = readings.map((reading, index) => reading - (values[index] ?? Number.NaN));
  return { parameters, residuals, sum: dot(residuals, residuals) };
}

/** A parameter that passes through 0 is still measured by its first guess, or by 1. */
function sizes({ start }: CurveData, parameters: readonly number[]): readonly number[] {
  return parameters.map((value, index) => Math.max(Math.abs(value), Math.abs(start[index] || 1)));
}

/** The next lower point, and the largest share by which a parameter moved; 0 where nothing lower is left. */
function downhill(data: CurveData, from: FitPoint, equations: NormalEquations, damping: number) {
  for (let trial = damping; trial <= LARGEST_DAMPING; trial *= 10) {
    const step = dampedStep(equations, trial);
    if (!step) continue;
    const parameters = from.parameters.map((value, index) => value + (step[index] ?? 0));
    const point = pointAt(data, parameters);
    if (!(point.sum <= from.sum)) continue;
    const own = sizes(data, parameters);
    const shares = step.map((move, index) => Math.abs(move) / (own[index] ?? 1));
    // As low as before is the bottom: further steps would only wander within the sum's rounding.
    if (point.sum === from.sum) return { point, damping, moved: 0 };
    const eased = Math.max(SMALLEST_DAMPING, trial / 10);
    return { point, damping: eased, moved: Math.max(...shares) };
  }
  return { point: from, damping, moved: 0 };
}

function finished(point: FitPoint, { matrix, scales }: NormalEquations): CurveFit {
  const inverse = invertMatrix(matrix);
  if (!inverse) return { kind: 'no fit', because: 'parameters cannot be told apart' };
  const { parameters, residuals, sum } = point;
  const residualDeviation = Math.sqrt(sum / (residuals.length - parameters.length));
  const lengths = inverse.map((row, index) => Math.sqrt(row[index] ?? 0));
  const errorsPerDeviation = lengths.map((length, index) => length / (scales[index] ?? 1));
  return {
    kind: 'fitted',
    parameters,
    standardErrors: errorsPerDeviation.map((error) => residualDeviation * error),
    errorsPerDeviation,
    correlation: inverse.map((row, i) =>
      row.map((value, j) => value / ((lengths[i] ?? 1) * (lengths[j] ?? 1))),
    ),
    residuals,
    sumOfSquares: sum,
    residualDeviation,
  };
}
