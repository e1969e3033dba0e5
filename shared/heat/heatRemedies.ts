import type { MoldBalance } from './moldOnPlate.ts';

/** One change that alone would bring the plateau to the wanted temperature. */
export type HeatRemedy =
  | { readonly kind: 'higher setting'; readonly setting: number }
  | { readonly kind: 'lid'; readonly lossCoefficient: number }
  | { readonly kind: 'flatter contact'; readonly contactConductance: number };

/**
 * What would bring the mold to a temperature that it does not reach, as figures.
 *
 * From the balance at the plateau, h_c (T_plate - T) = h_loss (1 + A_side / A) (T - T_room), solved for the setting, the
 * loss coefficient and the conductance in turn. Lid and contact can only help while the plate is hotter than wanted.
 *
 * @param wanted - plateau [°C], above the room
 * @param plateTemperature - the setting at hand [°C]
 */
export function heatRemedies(
  balance: MoldBalance,
  wanted: number,
  plateTemperature: number,
): readonly HeatRemedy[] {
  const { gain, loss, exposure, roomTemperature } = balance;
  const above = wanted - roomTemperature;
  const remedies: HeatRemedy[] = [];
  if (gain > 0) remedies.push({ kind: 'higher setting', setting: wanted + (loss * above) / gain });
  const lead = plateTemperature - wanted;
  if (lead <= 0) return remedies;
  if (gain > 0) remedies.push({ kind: 'lid', lossCoefficient: (gain * lead) / (above * exposure) });
  remedies.push({ kind: 'flatter contact', contactConductance: (loss * above) / lead });
  return remedies;
}
