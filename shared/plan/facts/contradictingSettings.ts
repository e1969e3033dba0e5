import type { Missing } from '../../book/missingCells.ts';
import { SETTINGS, type SettingKey, type Shop } from '../../book/settings/settings.ts';
import { describeIn } from '../../errors/describeIn.ts';
import { InputError } from '../../errors/InputError.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { baseDensity, cookRise } from '../amounts/planLayers.ts';
import type { OrderFacts } from './findOrder.ts';

/** Settings and pour temperatures that contradict each other; no plan can follow both. */
export function contradictingSettings(facts: OrderFacts, shop: Shop): readonly Missing[] {
  return [
    ...mustExceed(shop, 'demoldTemperature', 'roomTemperature'),
    ...mustExceed(shop, 'hardStop', 'pourTemperature'),
    ...cupTooSmall(facts, shop),
    ...pourTooCool(facts, shop),
  ];
}

function mustExceed(shop: Shop, higher: TemperatureKey, lower: TemperatureKey): readonly Missing[] {
  if (shop[higher] > shop[lower]) return [];
  const { label } = SETTINGS[higher];
  const what = SETTINGS[lower].label.toLowerCase();
  const broken = { value: shop[higher], limit: shop[lower], what };
  return [gap(shop, { sheet: 'Shop', heading: label }, broken)];
}

type TemperatureKey = Extract<SettingKey, `${string}Temperature` | 'hardStop' | 'lowestPour'>;

function pourTooCool(facts: OrderFacts, shop: Shop): readonly Missing[] {
  const what = SETTINGS.lowestPour.label.toLowerCase();
  return facts.pattern.layers
    .filter((layer) => layer.pourTemperature <= shop.lowestPour)
    .map(({ row, pourTemperature }) =>
      gap(
        shop,
        { sheet: 'Patterns', row, heading: 'Pour temperature' },
        { value: pourTemperature, limit: shop.lowestPour, what },
      ),
    );
}

function gap(
  shop: Shop,
  place: Omit<Missing, 'text'>,
  { value, limit, what }: { readonly value: number; readonly limit: number; readonly what: string },
): Missing {
  const field = place.heading.toLowerCase();
  const rule = { kind: 'greater than', limit, what } as const;
  const error = new InputError({ field, rule, value, unit: 'degC' });
  return { ...place, text: describeIn(error, shop.units) };
}

/** A cup must hold more than what stays on its wall, hot. */
function cupTooSmall(facts: OrderFacts, shop: Shop): readonly Missing[] {
  const swelling = 1 + DEFAULTS.expansion.value * cookRise(shop);
  const lightest = Math.min(...facts.pattern.layers.map((_, index) => baseDensity(facts, index)));
  const stays = (shop.cupLoss / lightest) * swelling;
  if (shop.cupFill > stays) return [];
  const { label } = SETTINGS.cupFill;
  const what = 'what stays in each cup';
  const rule = { kind: 'greater than', limit: stays, what } as const;
  const error = new InputError({
    field: label.toLowerCase(),
    rule,
    value: shop.cupFill,
    unit: 'm3',
  });
  return [{ sheet: 'Shop', heading: label, text: describeIn(error, shop.units) }];
}
