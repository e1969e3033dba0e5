import { cavityVolume } from '../../batch/cavityVolume.ts';
import { type LayerBatch, layerBatch } from '../../batch/layerBatch.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { LayerTimes } from '../heat/planTimes.ts';
import type { LayerPlan, PiecesPlan } from '../planTypes.ts';
import { planDoses } from './planDoses.ts';

export interface PlannedLayer {
  readonly plan: Omit<LayerPlan, keyof LayerTimes | 'heatUsed'>;
  readonly batch: LayerBatch;
}

/** Masses, equal cups and doses of every layer. */
export function planLayers(
  facts: OrderFacts,
  pieces: PiecesPlan,
  shop: Shop,
): readonly PlannedLayer[] {
  const volume = cavityOf(facts);
  return facts.pattern.layers.map((layer, index) => {
    const { share, mark } = facts.fills[index] ?? { share: 0, mark: 1 };
    const batch = layerBatch({
      pieces: pieces.toPour,
      cavityVolume: volume,
      share,
      density: baseDensity(facts, index),
      overpour: shop.overpour,
      cupLoss: shop.cupLoss,
      colorCheck: shop.colorCheck,
      cupFill: shop.cupFill,
      expansion: DEFAULTS.expansion.value,
      temperatureRise: cookRise(shop),
    });
    const plan = {
      order: layer.order,
      layer: layer.layer,
      base: layer.base.record.material ?? '',
      lot: layer.base.record.lot ?? '',
      share,
      fillMark: mark,
      cups: batch.cups,
      cupVolume: batch.cupVolume,
      cupMass: batch.cupMass,
      totalMass: batch.totalMass,
      doses: planDoses(facts.doses[index] ?? [], batch, shop),
      pourTemperature: layer.pourTemperature,
    };
    return { plan, batch };
  });
}

/** A cup is fullest when it is hottest: at the cook temperature, from the room's. */
export function cookRise(shop: Shop): number {
  return shop.cookTemperature - shop.roomTemperature;
}

/** Volume of one cavity [m3]: as given, or a finished piece's weight over the mean density of its layers. */
export function cavityOf(facts: OrderFacts): number {
  const { content } = facts.mold;
  if (content.kind === 'volume') return content.volume;
  const density = facts.fills.reduce(
    (sum, { share }, index) => sum + share * baseDensity(facts, index),
    0,
  );
  return cavityVolume(content.weight, density);
}

/** Density of a layer's base [kg/m3]: from Materials, else the default. */
export function baseDensity(facts: OrderFacts, index: number): number {
  return facts.pattern.layers[index]?.base.record.density ?? DEFAULTS.density.value;
}
