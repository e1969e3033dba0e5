import { SETTINGS, type SettingKey, type Shop } from '../../../shared/book/settings/settings.ts';
import type { MoldFacts } from '../../../shared/plan/facts/findMold.ts';
import type { PlateFacts } from '../../../shared/plan/facts/findPlate.ts';

const INCH = 0.0254;

/** A shop at sea level with every setting at its default, changed where a test says so. */
export function benchShop(changes: Partial<Shop> = {}): Shop {
  const defaults: Record<string, string | number> = {};
  for (const key of Object.keys(SETTINGS) as SettingKey[]) defaults[key] = SETTINGS[key].value; // keys of the one table of settings
  return { ...(defaults as Shop), ...changes }; // every key was just set
}

/** An open mold of 6 x 4 in, one inch high. */
export function benchMold(changes: Partial<MoldFacts> = {}): MoldFacts {
  return {
    name: 'Ribbed 4 in',
    row: 2,
    kind: 'open',
    cavities: 8,
    content: { kind: 'volume', volume: 9.2e-6 },
    profile: 'half-round',
    cavityWidth: 0.014,
    cavityDepth: 0.0105,
    cavityLength: undefined,
    blockLength: 6 * INCH,
    blockWidth: 4 * INCH,
    blockHeight: INCH,
    finish: 'bare',
    pourSeconds: 8,
    owned: 4,
    ...changes,
  };
}

/** A thin griddle of 1500 W with nothing measured; warm from the start unless a warm-up is given. */
export function benchPlate(changes: Partial<PlateFacts> = {}): PlateFacts {
  return {
    name: 'Long griddle',
    row: 2,
    kind: 'thin griddle',
    usableLength: 0.5,
    usableWidth: 0.26,
    watts: 1500,
    lowestSetting: undefined,
    highestSetting: 204,
    warmUp: 0,
    contactConductance: undefined,
    contactError: undefined,
    deadBand: undefined,
    lid: 'none',
    lossShare: undefined,
    dialOffset: undefined,
    ...changes,
  };
}
