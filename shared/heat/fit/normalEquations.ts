import { invertMatrix } from './invertMatrix.ts';

export type Curve = (parameters: readonly number[]) => readonly number[];

/** J'J with ones on its diagonal, J'r to match, and the scales that made it so. */
export interface NormalEquations {
  readonly scales: readonly number[];
  readonly matrix: readonly (readonly number[])[];
  readonly gradient: readonly number[];
}

/**
 * Derivatives of a curve's readings by its parameters, by central differences.
 * @param widths - half the difference for each parameter, > 0
 * @returns parameters by readings
 */
export function curveSlopes(
  curve: Curve,
  parameters: readonly number[],
  widths: readonly number[],
): readonly (readonly number[])[] {
  return parameters.map((parameter, index) => {
    const width = widths[index] ?? Number.NaN;
    const at = (value: number) => curve(parameters.map((own, i) => (i === index ? value : own)));
    const low = at(parameter - width);
    return at(parameter + width).map((high, i) => (high - (low[i] ?? Number.NaN)) / (2 * width));
  });
}

export function normalEquations(
  slopes: readonly (readonly number[])[],
  residuals: readonly number[],
): NormalEquations {
  // A parameter without influence keeps a scale, and is found out by the zero on its diagonal.
  const scales = slopes.map((slope) => Math.sqrt(dot(slope, slope)) || 1);
  const scaled = slopes.map((slope, index) => slope.map((value) => value / (scales[index] ?? 1)));
  const matrix = scaled.map((one) => scaled.map((other) => dot(one, other)));
  return { scales, matrix, gradient: scaled.map((slope) => dot(slope, residuals)) };
}

/** Marquardt's step: the scaled matrix with `damping` added to its diagonal, solved. */
export function dampedStep(
  { scales, matrix, gradient }: NormalEquations,
  damping: number,
): readonly number[] | undefined {
  const damped = matrix.map((row, i) => row.map((value, j) => (i === j ? value + damping : value)));
  const inverse = invertMatrix(damped);
  return inverse?.map((row, index) => dot(row, gradient) / (scales[index] ?? 1));
}

export function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, value, index) => sum + value * (other[index] ?? Number.NaN), 0);
}
