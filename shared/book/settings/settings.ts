import { DAY_SETTINGS } from './daySettings.ts';
import { MONEY_SETTINGS } from './moneySettings.ts';
import type { Setting, ShopFigure } from './setting.ts';

/** Everything the shop can set, with its default in engine units. One row each on the sheet *Shop*. */
export const SETTINGS = {
  shopName: {
    kind: 'text',
    label: 'Shop name',
    value: '',
    about: 'Printed at the top of the run sheet.',
  },
  units: {
    kind: 'choice',
    label: 'Units',
    choices: ['US', 'metric'],
    value: 'US',
    about: 'Units of the sidebar and the run sheet. Each column’s own unit stands in its heading.',
  },
  elevation: {
    kind: 'number',
    label: 'Elevation',
    measure: 'elevation',
    bounds: { atLeast: -400, atMost: 5000 },
    value: 0,
    places: 0,
    about: 'Height of the shop above sea level; sets the boiling point of water there.',
  },
  roomTemperature: {
    kind: 'number',
    label: 'Room temperature',
    measure: 'temperature',
    bounds: { atLeast: -10, atMost: 50 },
    value: 22,
    places: 0,
    about: 'Air around the plate.',
  },
  topTarget: {
    kind: 'number',
    label: 'Mold top above boiling',
    measure: 'temperatureDifference',
    bounds: { atLeast: -30, atMost: 40 },
    value: 3,
    places: 0,
    about: 'The run starts when the mold top reads the local boiling point of water plus this.',
  },
  readyWait: {
    kind: 'number',
    label: 'Wait after ready',
    measure: 'minutes',
    bounds: { atLeast: 0, atMost: 7200 },
    value: 300,
    places: 0,
    about: 'Spare minutes between a hot mold and the first pour.',
  },
  confidence: {
    kind: 'number',
    label: 'Confidence for pieces',
    measure: 'fraction',
    bounds: { greaterThan: 0.5, lessThan: 1 },
    value: 0.9,
    places: 0,
    about: 'Chance of ending with enough good pieces.',
  },
  expectedYield: {
    kind: 'number',
    label: 'Yield before any record',
    measure: 'fraction',
    bounds: { greaterThan: 0, lessThan: 1 },
    value: 0.9,
    places: 0,
    about: 'Good share assumed for a mold and pattern with no log rows.',
  },
  yieldWeight: {
    kind: 'number',
    label: 'Weight of that yield',
    bounds: { greaterThan: 0, atMost: 1000 },
    value: 10,
    places: 0,
    about: 'How many logged pieces that assumption is worth.',
  },
  overpour: {
    kind: 'number',
    label: 'Overpour',
    measure: 'fraction',
    bounds: { atLeast: 0, atMost: 1 },
    value: 0.05,
    places: 0,
    about: 'Extra plastisol for topping off and drips, as a share of what the pieces hold.',
  },
  cupLoss: {
    kind: 'number',
    label: 'Left in each cup',
    measure: 'baseMass',
    bounds: { atLeast: 0, atMost: 0.5 },
    value: 0.006,
    places: 2,
    about: 'Plastisol that stays on the wall of a cup.',
  },
  colorCheck: {
    kind: 'number',
    label: 'Color check',
    measure: 'baseMass',
    bounds: { atLeast: 0, atMost: 0.5 },
    value: 0.004,
    places: 2,
    about: 'Drizzled out of each layer to judge its color.',
  },
  cupFill: {
    kind: 'number',
    label: 'Cup fill',
    measure: 'liquidVolume',
    bounds: { greaterThan: 0, atMost: 0.005 },
    value: 1.774e-4,
    places: 1,
    about: 'Most hot plastisol in one cup, so that it can be stirred.',
  },
  doseTolerance: {
    kind: 'number',
    label: 'Dose tolerance',
    measure: 'fraction',
    bounds: { greaterThan: 0, atMost: 0.5 },
    value: 0.1,
    places: 0,
    about: 'Largest error of a dose rounded to whole drops.',
  },
  cookTemperature: {
    kind: 'number',
    label: 'Cook temperature',
    measure: 'temperature',
    bounds: { atLeast: 150, atMost: 190 },
    value: 177,
    places: 0,
    about: 'The plastisol is cooked through at this. The SDS and the maker’s sheet come first.',
  },
  pourTemperature: {
    kind: 'number',
    label: 'Pour temperature',
    measure: 'temperature',
    bounds: { atLeast: 120, atMost: 190 },
    value: 165,
    places: 0,
    about: 'Cup temperature at the pour.',
  },
  pourLoss: {
    kind: 'number',
    label: 'Lost in pouring',
    measure: 'temperatureDifference',
    bounds: { atLeast: 0, atMost: 30 },
    value: 7,
    places: 0,
    about:
      'How much cooler a layer lands than its cup. Read the cup, pour, read the fresh layer at once with a fast probe.',
  },
  lowestPour: {
    kind: 'number',
    label: 'Lowest pour temperature',
    measure: 'temperature',
    bounds: { atLeast: 110, atMost: 190 },
    value: 155,
    places: 0,
    about: 'Below this the cup goes back to be heated.',
  },
  hardStop: {
    kind: 'number',
    label: 'Hard stop',
    measure: 'temperature',
    bounds: { atLeast: 170, atMost: 196 },
    value: 190,
    places: 0,
    about: 'No cup ever goes above this; a lower limit on the SDS wins.',
  },
  setTemperature: {
    kind: 'number',
    label: 'Set temperature',
    measure: 'temperature',
    bounds: { atLeast: 70, atMost: 130 },
    value: 92,
    places: 0,
    about:
      'Mean temperature at which a layer stops moving. Weakly known; your own trials replace it.',
  },
  firmTemperature: {
    kind: 'number',
    label: 'Firm temperature',
    measure: 'temperature',
    bounds: { atLeast: 80, atMost: 140 },
    value: 110,
    places: 0,
    about: 'Surface temperature below which the next layer will not mix in.',
  },
  bondTemperature: {
    kind: 'number',
    label: 'Bond temperature',
    measure: 'temperature',
    bounds: { atLeast: 90, atMost: 140 },
    value: 116,
    places: 0,
    about: 'Contact temperature above which two layers bond.',
  },
  demoldTemperature: {
    kind: 'number',
    label: 'Demold temperature',
    measure: 'temperature',
    bounds: { atLeast: 30, atMost: 80 },
    value: 60,
    places: 0,
    about: 'Pieces come out of the mold below this.',
  },
  microwavePower: {
    kind: 'number',
    label: 'Microwave power',
    measure: 'power',
    bounds: { greaterThan: 0, atMost: 3000 },
    value: 1000,
    places: 0,
    about: 'Rated output.',
  },
  microwaveEfficiency: {
    kind: 'number',
    label: 'Microwave efficiency',
    measure: 'fraction',
    bounds: { greaterThan: 0, atMost: 1 },
    value: 0.45,
    places: 0,
    about:
      'Share of the rated output that reaches the cup. One weighed heating in Bench trials gives that of your own oven.',
  },
  heatBudget: {
    kind: 'number',
    label: 'Heat budget',
    measure: 'minutes',
    bounds: { greaterThan: 0, atMost: 36000 },
    value: 3600,
    places: 0,
    about:
      'Minutes at 170 °C (338 °F), or the same harm at other temperatures, that a plastisol may spend hot in all.',
  },
  setUpTime: {
    kind: 'number',
    label: 'Set-up time',
    measure: 'minutes',
    bounds: { atLeast: 0, atMost: 14400 },
    value: 1200,
    places: 0,
    about: 'Laying out, cleaning the mold, putting away: once a run.',
  },
  colorTime: {
    kind: 'number',
    label: 'Color time',
    measure: 'minutes',
    bounds: { atLeast: 0, atMost: 7200 },
    value: 240,
    places: 0,
    about: 'Weighing and coloring one cup.',
  },
  finishTime: {
    kind: 'number',
    label: 'Finish time per piece',
    measure: 'seconds',
    bounds: { atLeast: 0, atMost: 3600 },
    value: 25,
    places: 0,
    about: 'Demolding, inspecting and packing one piece.',
  },
  ...DAY_SETTINGS,
  ...MONEY_SETTINGS,
} as const satisfies Readonly<Record<string, Setting>>;

/** Rows of *Shop* that fill themselves; what fills them is in `shopFormula`. */
export const SHOP_FIGURES = {
  boilingPoint: {
    kind: 'computed',
    label: 'Boiling point here',
    measure: 'temperature',
    places: 1,
    after: 'topTarget',
    about: 'Of water at the elevation above. Fills itself.',
  },
  topReads: {
    kind: 'computed',
    label: 'Mold top must read',
    measure: 'temperature',
    places: 1,
    after: 'topTarget',
    about: 'Boiling point here plus the setting above: the run starts at this. Fills itself.',
  },
} as const satisfies Readonly<Record<string, ShopFigure>>;

export type ShopFigureKey = keyof typeof SHOP_FIGURES;

export type SettingKey = keyof typeof SETTINGS;

type ValueOf<S extends Setting> = S extends { readonly kind: 'number' | 'money' }
  ? number
  : S extends { readonly kind: 'choice'; readonly choices: readonly (infer Choice)[] }
    ? Choice
    : string;

/** The shop's settings in engine units. */
export type Shop = { readonly [Key in SettingKey]: ValueOf<(typeof SETTINGS)[Key]> };

/** Headings of the sheet *Shop*. */
export const SHOP_HEADINGS = ['Setting', 'Value', 'Unit', 'About'] as const;
