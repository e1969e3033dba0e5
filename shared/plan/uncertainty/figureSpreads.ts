import type { Shop } from '../../book/settings/settings.ts';
import { DEFAULTS, type Default } from '../../material/defaults.ts';
import type { Spread } from '../../uncertainty/drawnValue.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import { type HeatFigures, usualFigures } from '../heat/heatFigures.ts';

/** Standard error of a contact that a shop has entered without one, as a share: nine of ten within 30 %. An assumption. */
const ENTERED_CONTACT_ERROR = 0.18;

/** Heat loss of a mold around the published figure: faces differ, and so does the air of a room. */
const LOSS_SHARE = { low: 0.8, value: 1, high: 1.25 } as const;
/** The same where the shop's own trials told it. An assumption: they do so to 20 %, or leave it alone. */
const OWN_LOSS_SHARE = { low: 0.85, value: 1, high: 1.15 } as const;

/** Dial of a household griddle, from memory; of a thick plate, weak; and what a surface probe leaves, weak [K]. */
const DIAL_OFFSET = { 'thin griddle': 15, 'flat thick plate': 5, own: 2 } as const;

/** What is thought of every unknown figure of a plan: the usual value with the range of its default around it, or the shop's fit. */
export function figureSpreads(
  plate: PlateFacts,
  shop: Shop,
): Readonly<Record<keyof HeatFigures, Spread>> {
  const usual = usualFigures(plate, shop);
  const offset = DIAL_OFFSET[plate.dialOffset === undefined ? plate.kind : 'own'];
  const own = (key: keyof HeatFigures & keyof typeof DEFAULTS) => around(usual[key], DEFAULTS[key]);
  return {
    contactConductance: contactSpread(plate),
    lossShare: scaled(usual.lossShare, plate.lossShare === undefined ? LOSS_SHARE : OWN_LOSS_SHARE),
    dialOffset: around(usual.dialOffset, { low: -offset, value: 0, high: offset }),
    conductivity: own('conductivity'),
    specificHeat: own('specificHeat'),
    hotDensity: own('hotDensity'),
    pourLoss: around(usual.pourLoss, pourLossRange(shop)),
    setTemperature: own('setTemperature'),
    firmTemperature: own('firmTemperature'),
    bondTemperature: own('bondTemperature'),
    surfaceCoefficient: own('surfaceCoefficient'),
    localAirTemperature: own('localAirTemperature'),
    meltToMold: byFactors(DEFAULTS.meltToMold),
    cupCoefficient: own('cupCoefficient'),
  };
}

/** A pour loss of the shop's own was read with a probe: to 2 K, weak. */
function pourLossRange(shop: Shop): Range {
  const usual = DEFAULTS.pourLoss;
  return shop.pourLoss === usual.value ? usual : { low: -2, value: 0, high: 2 };
}

type Range = Pick<Default, 'low' | 'value' | 'high'>;

function contactSpread({ kind, contactConductance: value, contactError }: PlateFacts): Spread {
  if (value !== undefined)
    return { kind: 'fitted', value, error: contactError ?? ENTERED_CONTACT_ERROR * value };
  return byFactors(
    kind === 'thin griddle'
      ? DEFAULTS.contactConductanceGriddle
      : DEFAULTS.contactConductanceThickPlate,
  );
}

/** The range of a default, moved to the value in use: a shop's own value is no surer than the default's. */
function around(mode: number, { low, value, high }: Range): Spread {
  return { kind: 'range', low: mode + low - value, mode, high: mode + high - value };
}

function scaled(mode: number, { low, high }: Range): Spread {
  return { kind: 'range', low: mode * low, mode, high: mode * high };
}

/** Conductances are known by factors: half and double are equally far off. */
function byFactors({ low, value, high }: Range): Spread {
  return { kind: 'factors', low, mode: value, high };
}
