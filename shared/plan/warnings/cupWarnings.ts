import type { Shop } from '../../book/settings/settings.ts';
import { countText, durationText, shareText, temperatureText } from '../../words/quantityText.ts';
import type { CupPlan } from '../heat/planCup.ts';
import type { LayerPlan, PiecesPlan, Warning } from '../planTypes.ts';

/** What the cups cannot keep up with. */
export function cupWarnings(
  cup: CupPlan & { readonly cookTemperature: number },
  pieces: PiecesPlan,
  layers: readonly LayerPlan[],
  shop: Shop,
): readonly Warning[] {
  const texts = [
    ...paceTexts(cup, pieces),
    ...budgetTexts(cup),
    ...layers
      .filter((layer) => layer.pourTemperature > cup.cookTemperature)
      .map(
        (layer) =>
          `The ${layer.layer} pours at ${temperatureText(layer.pourTemperature, shop.units)}, hotter than the cup is cooked: pour at ${temperatureText(cup.cookTemperature, shop.units)} or less.`,
      ),
  ];
  return texts.map((text) => ({ about: 'cups', text }));
}

function paceTexts(cup: CupPlan, { perRound, toPour }: PiecesPlan): readonly string[] {
  const band = durationText(cup.cupTime, 'down');
  if (cup.cavitiesPerCup === 0)
    return [
      `A cup stays hot enough for ${band}, not long enough for one cavity: use a fuller cup, or pour hotter.`,
    ];
  if (cup.layerTime <= cup.cupTime) return [];
  const cavities = countText(Math.min(perRound, toPour), 'cavity', 'cavities');
  return [
    `Pouring a layer into ${cavities} takes ${durationText(cup.layerTime, 'up')}, and a cup stays hot enough for ${band}: have a second cup hot, or reheat after ${countText(cup.cavitiesPerCup, 'cavity', 'cavities')}.`,
  ];
}

function budgetTexts({ heatings, heatUsed }: CupPlan): readonly string[] {
  if (heatUsed <= 1) return [];
  return [
    `One cup is heated ${countText(heatings, 'time')} and uses ${shareText(heatUsed)} of its heat budget: cook smaller cups fresh for the later rounds.`,
  ];
}
