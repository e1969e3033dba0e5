import type { Shop } from '../../book/settings/settings.ts';
import { countText, durationText, temperatureText, volumeText } from '../../words/quantityText.ts';
import { cavityOf } from '../amounts/planLayers.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import { isInTime, type WindowRemedy } from '../heat/windowRemedies.ts';
import type { LayerPlan, Warning } from '../planTypes.ts';

/** Layers that some cavity gets too late, with what mends it; and a cavity that cannot hold what it is said to. */
export function layerWarnings(
  facts: OrderFacts,
  layers: readonly LayerPlan[],
  { remedies, top }: { readonly remedies: readonly WindowRemedy[]; readonly top: number },
  shop: Shop,
): readonly Warning[] {
  const late = layers.filter((layer) => !isInTime(layer));
  const texts = [
    ...late.map((layer) => `${lateText(layer)}.`),
    ...(late.length > 0 ? [remedyText(remedies, top, shop)] : []),
    ...cavityTexts(facts, shop),
  ];
  return texts.map((text) => ({ about: 'layers', text }));
}

function lateText({ layer, window, run }: LayerPlan): string {
  if (window?.kind !== 'between')
    return `The ${layer} has no window on the layer below: ${window?.kind === 'none' ? window.because : ''}`;
  const latest = durationText(window.latest, 'down');
  const wait = durationText(run.wait?.longest ?? 0, 'up');
  return `The ${layer} must follow within ${latest}, and a cavity waits ${wait} while the others are filled`;
}

function remedyText(remedies: readonly WindowRemedy[], top: number, shop: Shop): string {
  if (remedies.length === 0)
    return 'Fewer cavities at a time, a cover, another mold top or hotter cups do not mend that by this model: change the pattern or the mold.';
  const words = remedies.map((remedy) => remedyWords(remedy, top, shop));
  return `What mends it: ${words.join(', or ')}.`;
}

function remedyWords(remedy: WindowRemedy, top: number, shop: Shop): string {
  switch (remedy.kind) {
    case 'fewer cavities':
      return `${countText(remedy.cavities, 'cavity', 'cavities')} at a time through all layers`;
    case 'cover':
      return 'a cover that keeps the draft off the molds';
    case 'mold top':
      return `a mold top of ${temperatureText(top + remedy.warmer, shop.units)} at the first pour`;
    case 'hotter cup':
      return `cups at ${temperatureText(remedy.pourTemperature, shop.units, 'down')}`;
  }
}

function cavityTexts(facts: OrderFacts, shop: Shop): readonly string[] {
  const { cavityLength, cavityWidth, cavityDepth, name } = facts.mold;
  if (cavityLength === undefined) return [];
  const box = cavityLength * cavityWidth * cavityDepth;
  const volume = cavityOf(facts);
  if (volume <= box) return [];
  return [
    `A cavity of ${name} is said to hold ${volumeText(volume, shop.units)}, more than its length × width × depth of ${volumeText(box, shop.units)}: measure it again in Molds.`,
  ];
}
