import type { HeatDetail } from '../runSheet/heatDetail.ts';
import type { OrderPlan } from '../runSheet/plan.ts';
import type { UnitSystem } from '../units/measures.ts';

/** What the profile picture shows: temperatures through the stack at a few moments; [m], [degC], [s]. */
export interface LayerProfile {
  readonly kind: 'layer-profile';
  readonly system: UnitSystem;
  /** Names of the layers, bottom first */
  readonly names: readonly string[];
  readonly profiles: HeatDetail['profiles'];
  readonly seams: HeatDetail['seams'];
  readonly setTemperature: number;
  readonly bondTemperature: number;
}

/** The profiles of a plan; undefined before they are solved. */
export function layerProfileOf(
  { layers, detail, system }: OrderPlan,
  {
    setTemperature,
    bondTemperature,
  }: { readonly setTemperature: number; readonly bondTemperature: number },
): LayerProfile | undefined {
  if (detail === undefined || detail.profiles.length === 0) return undefined;
  const names = layers.map(({ order, layer }) => `${order} ${layer}`);
  const { profiles, seams } = detail;
  return { kind: 'layer-profile', system, names, profiles, seams, setTemperature, bondTemperature };
}
