import { requireNumber } from '../../errors/requireNumber.ts';
import { SEA_LEVEL_AIR } from './airFilm.ts';
import type { Room } from './faceCoefficient.ts';
import { type HeatingMold, type MoldNetwork, moldNetwork, partLoss } from './heatingMold.ts';
import { type HeatingPlate, requirePlate } from './heatingPlate.ts';

export interface HeatUpSetup {
  readonly plate: HeatingPlate;
  /** All that stand on the plate and share its watts, at least one */
  readonly molds: readonly HeatingMold[];
  /** [°C], -20 to 60 */
  readonly roomTemperature: number;
  /** Air pressure of the place [Pa], > 0; sea level's when left out */
  readonly pressure?: number;
}

/** Plate, molds and room, checked and in one piece. The state is the plate, then each mold's parts from the plate upward. */
export interface PlateRun {
  readonly plate: HeatingPlate;
  readonly molds: readonly MoldNetwork[];
  readonly room: Room;
  /** [°C] */
  readonly start: readonly number[];
  /** Where in the state each mold's top is */
  readonly tops: readonly number[];
}

/** What the heater does; `holding` feeds exactly what keeps the plate where it is. */
export type Heater = 'on' | 'off' | 'holding';

/** @throws InputError on a figure out of range, or a setting not above the room */
export function plateRun(setup: HeatUpSetup): PlateRun {
  const { plate, roomTemperature, pressure = SEA_LEVEL_AIR } = setup;
  const temperature = { unit: 'degC', atLeast: -20, atMost: 60 } as const;
  requireNumber(roomTemperature, 'room temperature', temperature);
  requireNumber(pressure, 'air pressure', { unit: 'Pa', greaterThan: 0 });
  requireNumber(setup.molds.length, 'molds on the plate', { atLeast: 1 });
  const room = { temperature: roomTemperature, pressure };
  requirePlate(plate, room);
  const molds = setup.molds.map((mold) => moldNetwork(mold, room));
  const plateStart =
    plate.kind === 'held' ? plate.setting : (plate.startTemperature ?? room.temperature);
  const start = [plateStart];
  const tops: number[] = [];
  for (const mold of molds) {
    for (const _ of mold.parts) start.push(mold.start);
    tops.push(start.length - 1);
  }
  return { plate, molds, room, start, tops };
}

/**
 * Rates of change of the state [K/s], and the power that molds and room draw from the plate [W].
 */
export function plateRates(run: PlateRun, state: readonly number[], heater: Heater) {
  const { plate, molds, room } = run;
  const plateTemperature = state[0] ?? room.temperature;
  const rates = [0];
  let drawn = 0;
  for (const mold of molds) {
    let under = plateTemperature;
    let inflow = 0;
    mold.parts.forEach((part, index) => {
      const at = state[rates.length] ?? under;
      const flow = (index === 0 ? mold.contact : mold.joint) * (under - at);
      if (index === 0) drawn += mold.count * flow;
      else rates[rates.length - 1] = (rates[rates.length - 1] ?? 0) - flow / inflow;
      rates.push((flow - partLoss(part, at, { room, lossShare: mold.lossShare })) / part.capacity);
      inflow = part.capacity;
      under = at;
    });
  }
  if (plate.kind === 'held') return { rates, drawn };
  drawn += plate.lossConductance * (plateTemperature - room.temperature);
  const power = heater === 'on' ? plate.watts : 0;
  if (heater !== 'holding') rates[0] = (power - drawn) / plate.heatCapacity;
  return { rates, drawn };
}
