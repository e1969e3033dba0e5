import type { Book } from '../../shared/book/book.ts';
import { SETTINGS, type SettingKey, type Shop } from '../../shared/book/settings/settings.ts';
import type {
  DoseRecord,
  MaterialRecord,
  MoldRecord,
  OrderRecord,
  PatternRecord,
  PlateRecord,
  PourLogRecord,
} from '../../shared/book/tables.ts';

/** The shop's settings at their defaults, changed where a test says so. */
function demoShop(changes: Partial<Shop> = {}): Shop {
  const defaults: Record<string, string | number> = {};
  for (const key of Object.keys(SETTINGS) as SettingKey[]) defaults[key] = SETTINGS[key].value; // keys of the one table of settings
  return { ...(defaults as Shop), shopName: 'Quarry Pond Baits', elevation: 550, ...changes }; // every key was just set
}

const ORDERS: readonly OrderRecord[] = [
  {
    order: '2041',
    due: '2026-12-04',
    customer: 'Customer 12',
    mold: 'Ribbed 4 in',
    pattern: 'Creek minnow',
    quantity: 40,
    plate: 'Long griddle',
    moldsInUse: 2,
    pourOn: '2026-12-01',
    firstPour: 570,
    notes: 'Pearl in the belly only',
  },
  { order: '2042', mold: 'Paddle 3 in', pattern: 'Two tone', quantity: 24 },
  { order: '2043', mold: 'Ribbed 4 in', pattern: 'Creek minnow', version: 1, quantity: 12 },
];

const MOLDS: readonly MoldRecord[] = [
  {
    mold: 'Ribbed 4 in',
    kind: 'open',
    cavities: 8,
    cavityVolume: 9.2e-6,
    profile: 'half-round',
    cavityLength: 0.102,
    cavityWidth: 0.014,
    cavityDepth: 0.0105,
    blockLength: 0.178,
    blockWidth: 0.14,
    blockHeight: 0.025,
    finish: 'bare',
    pourSeconds: 8,
    owned: 2,
  },
  {
    mold: 'Paddle 3 in',
    kind: 'two-piece',
    cavities: 4,
    pieceWeight: 0.0062,
    profile: 'ellipse',
    cavityLength: 0.08,
    cavityWidth: 0.016,
    cavityDepth: 0.013,
    blockLength: 0.12,
    blockWidth: 0.1,
    blockHeight: 0.038,
    finish: 'anodized',
    pourSeconds: 10,
  },
];

const CREEK_MINNOW: readonly PatternRecord[] = [
  { layerOrder: 1, layer: 'belly', share: 0.35, base: 'Soft plastisol' },
  { layerOrder: 2, layer: 'vein', share: 0.1, base: 'Soft plastisol' },
  { layerOrder: 3, layer: 'back', share: 0.55, base: 'Soft plastisol' },
];

const PATTERNS: readonly PatternRecord[] = [
  {
    pattern: 'Creek minnow',
    version: 1,
    layerOrder: 1,
    layer: 'body',
    share: 1,
    base: 'Soft plastisol',
  },
  ...CREEK_MINNOW.map((layer) => ({ pattern: 'Creek minnow', version: 2, ...layer })),
  {
    pattern: 'Two tone',
    version: 1,
    layerOrder: 1,
    layer: 'tail',
    fillMark: 0.4,
    base: 'Firm plastisol',
  },
  {
    pattern: 'Two tone',
    version: 1,
    layerOrder: 2,
    layer: 'head',
    fillMark: 1,
    base: 'Firm plastisol',
  },
];

const CUP = 2.365882365e-4; // 8 fl oz

const DOSES: readonly DoseRecord[] = [
  {
    pattern: 'Creek minnow',
    version: 2,
    layer: 'belly',
    material: 'White dispersion',
    amount: 12,
    unit: 'drop',
    per: CUP,
  },
  {
    pattern: 'Creek minnow',
    version: 2,
    layer: 'belly',
    material: 'Pearl powder',
    amount: 0.25,
    unit: 'tsp',
    per: CUP,
  },
  {
    pattern: 'Creek minnow',
    version: 2,
    layer: 'vein',
    material: 'Black dispersion',
    amount: 8,
    unit: 'drop',
    per: CUP,
  },
  {
    pattern: 'Creek minnow',
    version: 2,
    layer: 'back',
    material: 'Green dispersion',
    amount: 10,
    unit: 'drop',
    per: CUP,
  },
  {
    pattern: 'Creek minnow',
    version: 2,
    layer: 'back',
    material: 'Fine glitter',
    amount: 0.5,
    unit: 'tsp',
    per: CUP,
  },
  {
    pattern: 'Two tone',
    version: 1,
    layer: 'head',
    material: 'Black dispersion',
    amount: 4,
    unit: 'drop',
    per: CUP,
  },
];

const MATERIALS: readonly MaterialRecord[] = [
  {
    material: 'Soft plastisol',
    kind: 'plastisol',
    density: 1030,
    lot: 'P-311',
    maximumTemperature: 193,
    safetySheet: 'binder 1',
  },
  {
    material: 'Firm plastisol',
    kind: 'plastisol',
    density: 1060,
    lot: 'P-290',
    maximumTemperature: 193,
    safetySheet: 'binder 1',
  },
  {
    material: 'White dispersion',
    kind: 'colorant',
    density: 1500,
    dropVolume: 4.2e-8,
    lot: 'W-12',
    safetySheet: 'binder 2',
  },
  {
    material: 'Black dispersion',
    kind: 'colorant',
    density: 1100,
    dropVolume: 3.8e-8,
    lot: 'K-3',
    safetySheet: 'binder 2',
  },
  {
    material: 'Green dispersion',
    kind: 'colorant',
    density: 1200,
    lot: 'G-7',
    safetySheet: 'binder 2',
  },
  {
    material: 'Pearl powder',
    kind: 'powder',
    density: 2900,
    spoonDensity: 350,
    lot: 'PP-2',
    maximumLoading: 0.02,
    safetySheet: 'binder 3',
  },
  {
    material: 'Fine glitter',
    kind: 'glitter',
    density: 1390,
    spoonDensity: 600,
    lot: 'GL-1',
    safetySheet: 'binder 3',
  },
];

const PLATES: readonly PlateRecord[] = [
  {
    plate: 'Long griddle',
    kind: 'thin griddle',
    usableLength: 0.5,
    usableWidth: 0.26,
    watts: 1500,
    lowestSetting: 93,
    highestSetting: 204,
    warmUp: 480,
    contactConductance: 110,
  },
  {
    plate: 'Flat plate',
    kind: 'flat thick plate',
    usableLength: 0.3,
    usableWidth: 0.3,
    lowestSetting: 50,
    highestSetting: 250,
    warmUp: 900,
    contactConductance: 450,
  },
];

const POUR_LOG: readonly PourLogRecord[] = [
  {
    run: 'R1',
    order: '2001',
    mold: 'Ribbed 4 in',
    pattern: 'Creek minnow',
    version: 1,
    poured: 60,
    good: 54,
  },
  {
    run: 'R2',
    order: '2002',
    mold: 'Ribbed 4 in',
    pattern: 'Creek minnow',
    version: 2,
    poured: 73,
    good: 66,
  },
];

export interface DemoChanges {
  readonly shop?: Partial<Shop>;
  readonly orders?: readonly OrderRecord[];
  readonly molds?: readonly MoldRecord[];
  readonly patterns?: readonly PatternRecord[];
  readonly doses?: readonly DoseRecord[];
  readonly materials?: readonly MaterialRecord[];
  readonly plates?: readonly PlateRecord[];
  readonly pourLog?: readonly PourLogRecord[];
  readonly problems?: Book['problems'];
}

/** An invented shop's book, small and complete, engine units; a table that a test gives takes the place of the demo's. */
export function demoBook(changes: DemoChanges = {}): Book {
  return {
    shop: demoShop(changes.shop),
    orders: onRows(changes.orders ?? ORDERS),
    molds: onRows(changes.molds ?? MOLDS),
    patterns: onRows(changes.patterns ?? PATTERNS),
    doses: onRows(changes.doses ?? DOSES),
    materials: onRows(changes.materials ?? MATERIALS),
    plates: onRows(changes.plates ?? PLATES),
    pourLog: onRows(changes.pourLog ?? POUR_LOG),
    problems: changes.problems ?? [],
  };
}

function onRows<Record>(records: readonly Record[]) {
  return records.map((record, index) => ({ row: index + 2, record }));
}

/** The demo's records, for tests that change one field of one of them. */
export const DEMO = {
  orders: ORDERS,
  molds: MOLDS,
  patterns: PATTERNS,
  doses: DOSES,
  materials: MATERIALS,
  plates: PLATES,
  pourLog: POUR_LOG,
} as const;

/** The records with the one at `index` changed. */
export function withChange<Record>(
  records: readonly Record[],
  index: number,
  change: Partial<Record>,
): readonly Record[] {
  return records.map((record, place) => (place === index ? { ...record, ...change } : record));
}
