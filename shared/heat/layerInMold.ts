import { requireGreater } from '../errors/requireGreater.ts';
import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';

/** A poured layer in its mold, and what is around it. Everything below `moldTemperature` has a documented default. */
export interface LayerInMold {
  /** Of a slab; volume over wetted metal area of any other cavity [m], > 0 */
  readonly thickness: number;
  /** Of the plastic as it lies in the mold: the cup's, less the loss while pouring [°C] */
  readonly startTemperature: number;
  /** Held constant [°C], below the start */
  readonly moldTemperature: number;
  /** Near the free surface, over the plate [°C], below the start */
  readonly airTemperature?: number;
  /** Plastic's free surface to air [W/(m2 K)], >= 0; 0 for a closed cavity */
  readonly surfaceCoefficient?: number;
  /** Plastic to metal [W/(m2 K)], > 0 */
  readonly wallCoefficient?: number;
  /** Times this over a slab's: 1 for a slab, about 1.2 for a wide groove, 1.6 for a square one; > 0 */
  readonly shapeFactor?: number;
  readonly conductivity?: number;
  /** At working heat [kg/m3], > 0 */
  readonly density?: number;
  readonly specificHeat?: number;
}

/** The layer with every default filled in and every figure checked. */
export function completeLayer(layer: LayerInMold): Required<LayerInMold> {
  const complete = {
    airTemperature: DEFAULTS.localAirTemperature.value,
    surfaceCoefficient: DEFAULTS.surfaceCoefficient.value,
    wallCoefficient: DEFAULTS.meltToMold.value,
    shapeFactor: 1,
    conductivity: DEFAULTS.conductivity.value,
    density: DEFAULTS.hotDensity.value,
    specificHeat: DEFAULTS.specificHeat.value,
    ...layer,
  };
  requireNumber(complete.thickness, 'layer thickness', { unit: 'm', greaterThan: 0 });
  requireNumber(complete.startTemperature, 'pour temperature', { unit: 'degC' });
  requireNumber(complete.moldTemperature, 'mold temperature', { unit: 'degC' });
  requireNumber(complete.airTemperature, 'air temperature', { unit: 'degC' });
  requireNumber(complete.surfaceCoefficient, 'heat loss of the free surface', {
    unit: 'WPerM2K',
    atLeast: 0,
  });
  requireNumber(complete.wallCoefficient, 'plastic to mold conductance', {
    unit: 'WPerM2K',
    greaterThan: 0,
  });
  requireNumber(complete.shapeFactor, 'shape factor', { greaterThan: 0 });
  requireNumber(complete.conductivity, 'conductivity', { unit: 'WPerMK', greaterThan: 0 });
  requireNumber(complete.density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(complete.specificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  const start = { field: 'pour temperature', value: complete.startTemperature };
  const mold = { field: 'mold temperature', value: complete.moldTemperature };
  requireGreater(start, mold, 'degC');
  requireGreater(start, { field: 'air temperature', value: complete.airTemperature }, 'degC');
  return complete;
}
