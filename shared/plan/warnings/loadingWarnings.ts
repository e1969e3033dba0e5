import { loadings } from '../../batch/loadings.ts';
import type { MaterialRow } from '../../book/bookIndex.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { quantityText, shareText, temperatureText } from '../../words/quantityText.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { LayerFacts } from '../facts/findPattern.ts';
import { cookLimit } from '../facts/hardStop.ts';
import type { LayerPlan, Warning } from '../planTypes.ts';

/** Doses above what their material allows. */
export function loadingWarnings(
  facts: OrderFacts,
  layers: readonly LayerPlan[],
): readonly Warning[] {
  return layers
    .flatMap((layer, index) => loadingTexts(facts, layer, index))
    .map((text) => ({ about: 'materials', text }));
}

/** Maximum temperatures, assumed densities and safety data sheets: what a pattern version asks of its materials in any order. */
export function recipeWarnings(facts: OrderFacts, shop: Shop): readonly Warning[] {
  const texts = [
    ...facts.pattern.layers.flatMap((layer) => baseTexts(facts, layer, shop)),
    ...additiveTexts(facts, shop),
    ...missingSheets(materialsOf(facts)),
  ];
  return [...new Set(texts)].map((text) => ({ about: 'materials', text }));
}

function materialsOf(facts: OrderFacts): readonly MaterialRow[] {
  const bases = facts.pattern.layers.map((layer) => layer.base);
  return [...new Set([...bases, ...facts.doses.flat().map((dose) => dose.material)])];
}

function loadingTexts(facts: OrderFacts, layer: LayerPlan, index: number): readonly string[] {
  const limits = (facts.doses[index] ?? []).map(({ material }) => material.record.maximumLoading);
  const additives = layer.doses.map(({ material, mass }, place) => {
    const limit = limits[place];
    return { name: material, mass, ...(limit === undefined ? {} : { limit }) };
  });
  return loadings(layer.cupMass, additives).each.flatMap((one) => {
    if (one.verdict !== 'over limit') return [];
    return [
      `${one.name} is ${shareText(one.loading)} of the ${layer.layer}, above its limit of ${shareText(one.limit)}: dose less, or use a stronger colorant.`,
    ];
  });
}

function baseTexts(facts: OrderFacts, layer: LayerFacts, shop: Shop): readonly string[] {
  const { record } = layer.base;
  const maximum = record.maximumTemperature;
  const density = quantityText(DEFAULTS.density.value, 'density', shop.units, 2);
  const cook = cookLimit(facts, shop);
  const most = maximum === undefined ? '' : temperatureText(maximum, shop.units, 'down');
  return [
    ...(record.density === undefined
      ? [
          `The density of ${record.material} is not in Materials, so ${density} is assumed: weigh a measured cup.`,
        ]
      : []),
    ...(maximum !== undefined && shop.cookTemperature > maximum
      ? [
          `The cook temperature of ${temperatureText(shop.cookTemperature, shop.units)} is above the ${most} that ${record.material} bears: cook to ${temperatureText(cook, shop.units, 'down')}, and ask its maker whether that cooks it through.`,
        ]
      : []),
    ...(maximum !== undefined && layer.pourTemperature > maximum
      ? [
          `The ${layer.layer} pours at ${temperatureText(layer.pourTemperature, shop.units)}, above the ${most} that ${record.material} bears: pour cooler.`,
        ]
      : []),
  ];
}

function additiveTexts(facts: OrderFacts, shop: Shop): readonly string[] {
  const cook = cookLimit(facts, shop);
  return facts.pattern.layers.flatMap((layer, index) =>
    (facts.doses[index] ?? []).flatMap(({ material: { record } }) => {
      const maximum = record.maximumTemperature;
      if (maximum === undefined || maximum >= cook) return [];
      const most = temperatureText(maximum, shop.units, 'down');
      if (layer.pourTemperature > maximum)
        return [
          `The ${layer.layer} pours at ${temperatureText(layer.pourTemperature, shop.units)}, above the ${most} that ${record.material} bears: pour cooler, or leave it out.`,
        ];
      return [
        `Stir ${record.material} in after the cook, once the cup is below ${most}, and never heat that cup above it again.`,
      ];
    }),
  );
}

function missingSheets(used: readonly MaterialRow[]): readonly string[] {
  const names = used
    .filter(({ record }) => record.safetySheet === undefined)
    .map(({ record }) => record.material);
  return names.length === 0
    ? []
    : [`No SDS is listed in Materials for ${names.join(', ')}: find it before you heat anything.`];
}
