import type { Shop } from '../../book/settings/settings.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { PlateFacts } from '../facts/findPlate.ts';

/** Every figure that a plan's heat rests on and that nobody knows exactly; engine units. */
export interface HeatFigures {
  /** Plate to mold [W/(m2 K)] */
  readonly contactConductance: number;
  /** Heat that the mold loses, over the published figure for its faces */
  readonly lossShare: number;
  /** Plate surface less dial [K] */
  readonly dialOffset: number;
  /** Of the hot plastic [W/(m K)], [J/(kg K)], [kg/m3] */
  readonly conductivity: number;
  readonly specificHeat: number;
  readonly hotDensity: number;
  /** Cup less layer as it lands [K] */
  readonly pourLoss: number;
  /** [degC] */
  readonly setTemperature: number;
  readonly firmTemperature: number;
  readonly bondTemperature: number;
  /** Free surface to the air above it [W/(m2 K)], [degC] */
  readonly surfaceCoefficient: number;
  readonly localAirTemperature: number;
  /** Plastic to metal [W/(m2 K)] */
  readonly meltToMold: number;
  /** Stirred cup to the room [W/(m2 K)] */
  readonly cupCoefficient: number;
}

/** The figures a plan uses: the shop's own where it has them, else the defaults. */
export function usualFigures(plate: PlateFacts, shop: Shop): HeatFigures {
  const ofKind =
    plate.kind === 'thin griddle'
      ? DEFAULTS.contactConductanceGriddle
      : DEFAULTS.contactConductanceThickPlate;
  return {
    contactConductance: plate.contactConductance ?? ofKind.value,
    lossShare: plate.lossShare ?? 1,
    dialOffset: plate.dialOffset ?? 0,
    conductivity: DEFAULTS.conductivity.value,
    specificHeat: DEFAULTS.specificHeat.value,
    hotDensity: DEFAULTS.hotDensity.value,
    pourLoss: shop.pourLoss,
    setTemperature: shop.setTemperature,
    firmTemperature: shop.firmTemperature,
    bondTemperature: shop.bondTemperature,
    surfaceCoefficient: DEFAULTS.surfaceCoefficient.value,
    localAirTemperature: DEFAULTS.localAirTemperature.value,
    meltToMold: DEFAULTS.meltToMold.value,
    cupCoefficient: DEFAULTS.cupCoefficient.value,
  };
}
