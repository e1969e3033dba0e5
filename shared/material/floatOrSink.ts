import { requireNumber } from '../errors/requireNumber.ts';
import { waterDensity } from './waterDensity.ts';

export interface RiggedPiece {
  /** Plastic alone: mass [kg], > 0, and density [kg/m3], > 0 */
  readonly pieceMass: number;
  readonly pieceDensity: number;
  /** Hook and weight together: mass [kg], >= 0, and density [kg/m3], > 0 */
  readonly riggingMass: number;
  readonly riggingDensity: number;
  /** [°C], 0 to 100 */
  readonly waterTemperature: number;
}

export interface FloatOrSink {
  readonly verdict: 'floats' | 'sinks';
  /** Of piece and rigging together [kg/m3] */
  readonly density: number;
  /** Pull on the line in water, as a mass: positive sinks, negative floats up [kg] */
  readonly weightInWater: number;
}

/**
 * Whether a rigged piece floats in fresh water: its mass against the water it displaces (Archimedes). Trapped air is not counted.
 * @throws InputError on a figure out of range
 */
export function floatOrSink(piece: RiggedPiece): FloatOrSink {
  requireNumber(piece.pieceMass, 'piece weight', { unit: 'kg', greaterThan: 0 });
  requireNumber(piece.pieceDensity, 'piece density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(piece.riggingMass, 'hook and weight', { unit: 'kg', atLeast: 0 });
  requireNumber(piece.riggingDensity, 'density of hook and weight', {
    unit: 'kgPerM3',
    greaterThan: 0,
  });
  const mass = piece.pieceMass + piece.riggingMass;
  const volume = piece.pieceMass / piece.pieceDensity + piece.riggingMass / piece.riggingDensity;
  const weightInWater = mass - volume * waterDensity(piece.waterTemperature);
  return { verdict: weightInWater > 0 ? 'sinks' : 'floats', density: mass / volume, weightInWater };
}
