import type { LayerPlan, OrderPlan } from '../../plan/planTypes.ts';
import type { Band, HeatDetail } from '../../plan/uncertainty/heatDetail.ts';
import type { UnitSystem } from '../../units/measures.ts';

/** What the profile picture shows: temperatures through the stack at a few moments; [m], [degC], [s]. */
export interface LayerProfile {
  readonly kind: 'layer-profile';
  readonly system: UnitSystem;
  /** Names of the layers, bottom first */
  readonly names: readonly string[];
  readonly profiles: HeatDetail['profiles'];
  readonly jointHeights: HeatDetail['jointHeights'];
  /** Where a layer meets the one below as it lands: height [m], contact temperature [degC] */
  readonly joints: readonly Joint[];
  readonly setTemperature: number;
  readonly bondTemperature: number;
}

export interface Joint {
  /** Of the upper layer */
  readonly name: string;
  readonly height: number;
  readonly contact: number;
  readonly band?: Band;
  readonly verdict: 'bonds' | 'peels';
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
  const { profiles, jointHeights } = detail;
  return {
    kind: 'layer-profile',
    system,
    names: layers.map(nameOf),
    profiles,
    jointHeights,
    joints: layers.flatMap((layer, index) => {
      const height = jointHeights[index - 1];
      if (layer.joint === undefined || height === undefined) return [];
      const { contactTemperature: contact, verdict } = layer.joint;
      const band = detail.layers[index]?.contact;
      return [
        { name: nameOf(layer), height, contact, verdict, ...(band === undefined ? {} : { band }) },
      ];
    }),
    setTemperature,
    bondTemperature,
  };
}

function nameOf({ order, layer }: LayerPlan): string {
  return `${order} ${layer}`;
}
