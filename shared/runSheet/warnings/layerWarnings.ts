import type { Shop } from '../../book/settings.ts';
import type { OrderFacts } from '../findOrder.ts';
import type { LayerPlan, Warning } from '../plan.ts';
import { cavityOf } from '../planLayers.ts';
import { sayDuration, sayVolume } from '../say.ts';

/** Windows that close before the pourer is back, and a cavity that cannot hold what it is said to. */
export function layerWarnings(
  facts: OrderFacts,
  layers: readonly LayerPlan[],
  layerTime: number,
  shop: Shop,
): readonly Warning[] {
  const texts = [
    ...layers.flatMap((layer) => windowTexts(layer, layerTime)),
    ...cavityTexts(facts, shop),
  ];
  return texts.map((text) => ({ about: 'layers', text }));
}

function windowTexts({ layer, window }: LayerPlan, layerTime: number): readonly string[] {
  if (window === undefined || window.kind === 'from') return [];
  if (window.kind === 'none')
    return [
      `The ${layer} has no window on the layer below: ${window.because}. Change the mold’s temperature or the pour’s before you start.`,
    ];
  if (window.latest >= layerTime) return [];
  return [
    `The ${layer} must follow within ${sayDuration(window.latest, 'down')}, and pouring a layer takes ${sayDuration(layerTime, 'up')}: pour fewer cavities at a time, or heat the mold further.`,
  ];
}

function cavityTexts(facts: OrderFacts, shop: Shop): readonly string[] {
  const { cavityLength, cavityWidth, cavityDepth, name } = facts.mold;
  if (cavityLength === undefined) return [];
  const box = cavityLength * cavityWidth * cavityDepth;
  const volume = cavityOf(facts);
  if (volume <= box) return [];
  return [
    `A cavity of ${name} is said to hold ${sayVolume(volume, shop.units)}, more than its length × width × depth of ${sayVolume(box, shop.units)}: measure it again in Molds.`,
  ];
}
