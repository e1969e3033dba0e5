import type { UnitName } from '../units/units.ts';

/** A figure that a shop may replace by its own measurement. */
export interface Default {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Absent for plain numbers. */
  readonly unit?: UnitName;
  /** How well it is known, and from where. */
  readonly evidence: string;
}

/** Every default figure of the models, with the range in which a shop may find its own. */
export const DEFAULTS = {
  density: {
    value: 1040,
    low: 1000,
    high: 1100,
    unit: 'kgPerM3',
    evidence: 'additive volumes of resin and plasticizer at 23 °C; weigh your own',
  },
  hotDensity: {
    value: 1000,
    low: 950,
    high: 1060,
    unit: 'kgPerM3',
    evidence: 'density at 23 °C less expansion, mean of 60 to 170 °C',
  },
  specificHeat: {
    value: 1900,
    low: 1600,
    high: 2300,
    unit: 'JPerKgK',
    evidence:
      'between handbook values of the firm compound and of plasticizer esters; partly from memory',
  },
  conductivity: {
    value: 0.15,
    low: 0.13,
    high: 0.18,
    unit: 'WPerMK',
    evidence: 'property tables of plasticized PVC',
  },
  expansion: {
    value: 6.5e-4,
    low: 5e-4,
    high: 8e-4,
    evidence: 'volumetric, per K; property tables of firmer grades and, from memory, esters',
  },
  cookTemperature: {
    value: 177,
    low: 165,
    high: 190,
    unit: 'degC',
    evidence: 'trade guidance for full fusion, 350 °F',
  },
  pourTemperature: {
    value: 165,
    low: 155,
    high: 177,
    unit: 'degC',
    evidence: 'common practice, no source',
  },
  pourLoss: {
    value: 7,
    low: 3,
    high: 15,
    unit: 'differenceC',
    evidence: 'from memory; what the stream loses between cup and layer',
  },
  setTemperature: {
    value: 92,
    low: 82,
    high: 105,
    unit: 'degC',
    evidence:
      'mean of a layer when it stops moving; fitted to shop experience, weak, rises with resin content',
  },
  firmTemperature: {
    value: 110,
    low: 100,
    high: 120,
    unit: 'degC',
    evidence:
      'surface at which the next layer no longer mixes in; from the viscosity of soft melts, from memory, weak',
  },
  bondTemperature: {
    value: 116,
    low: 112,
    high: 122,
    unit: 'degC',
    evidence:
      'contact temperature that separates torn from peeled layers; fitted, agrees with remelting of the soft network',
  },
  demoldTemperature: {
    value: 60,
    low: 45,
    high: 66,
    unit: 'degC',
    evidence: 'trade guidance; warmer pieces distort',
  },
  heatBudget: {
    value: 3600,
    low: 1200,
    high: 9000,
    unit: 's',
    evidence: 'at 170 °C; weak, depends on the stabilizer',
  },
  activationEnergy: {
    value: 150_000,
    low: 130_000,
    high: 170_000,
    evidence: 'J/mol; isothermal degradation of plasticized PVC, 160 to 220 °C',
  },
  hardStop: {
    value: 190,
    low: 182,
    high: 196,
    unit: 'degC',
    evidence: 'margin to the flash point of common plasticizers; the SDS governs',
  },
  contactConductanceGriddle: {
    value: 100,
    low: 55,
    high: 170,
    unit: 'WPerM2K',
    evidence:
      'from the minutes a mold takes on a bowed griddle; handbook values for pressed flat faces do not hold',
  },
  contactConductanceThickPlate: {
    value: 500,
    low: 300,
    high: 2000,
    unit: 'WPerM2K',
    evidence: 'dry contact of flat metal faces at moderate pressure',
  },
  deadBandGriddle: {
    value: 20,
    low: 10,
    high: 30,
    unit: 'differenceC',
    evidence: 'swing of a bimetal thermostat at one corner, in all; from memory',
  },
  deadBandThickPlate: {
    value: 6,
    low: 2,
    high: 15,
    unit: 'differenceC',
    evidence: 'a thick plate evens out its switching; from memory',
  },
  plateArea: {
    value: 0.14,
    low: 0.08,
    high: 0.2,
    evidence: 'm2, evenly hot part of a household griddle; from memory',
  },
  platePower: {
    value: 10_000,
    low: 7000,
    high: 15_000,
    evidence: 'W/m2 of the evenly hot part; household griddle of 1.5 kW, from memory',
  },
  meltToMold: {
    value: 1500,
    low: 500,
    high: 4000,
    unit: 'WPerM2K',
    evidence: 'from memory; small effect',
  },
  moldLossBare: {
    value: 10.4,
    low: 8,
    high: 13,
    unit: 'WPerM2K',
    evidence: 'free convection and radiation of a machined face at 100 °C',
  },
  moldLossAnodized: {
    value: 17,
    low: 14,
    high: 18,
    unit: 'WPerM2K',
    evidence: 'free convection and radiation of an anodized face at 100 °C',
  },
  surfaceCoefficient: {
    value: 12,
    low: 6,
    high: 18,
    unit: 'WPerM2K',
    evidence: 'derived; a draft matters',
  },
  localAirTemperature: {
    value: 38,
    low: 25,
    high: 50,
    unit: 'degC',
    evidence: 'air just above a hot mold; derived',
  },
  roomTemperature: {
    value: 22,
    low: 10,
    high: 35,
    unit: 'degC',
    evidence: 'a heated shop; set your own',
  },
  aluminumDensity: {
    value: 2700,
    low: 2690,
    high: 2720,
    unit: 'kgPerM3',
    evidence: '6061 data sheet',
  },
  aluminumSpecificHeat: {
    value: 900,
    low: 880,
    high: 960,
    unit: 'JPerKgK',
    evidence: '6061 data sheet, 896 at room temperature',
  },
  emissivityMachined: {
    value: 0.1,
    low: 0.05,
    high: 0.2,
    evidence: 'infrared thermometer handbooks',
  },
  emissivityUsed: { value: 0.25, low: 0.2, high: 0.4, evidence: 'infrared thermometer handbooks' },
  emissivityAnodized: {
    value: 0.85,
    low: 0.7,
    high: 0.95,
    evidence: 'infrared thermometer handbooks',
  },
  emissivityPlastic: {
    value: 0.93,
    low: 0.88,
    high: 0.96,
    evidence: 'infrared thermometer handbooks',
  },
  microwaveEfficiency: {
    value: 0.45,
    low: 0.25,
    high: 0.65,
    evidence: 'share of the rated output that reaches a small cup; from memory, calibrate',
  },
  microwaveInput: {
    value: 0.6,
    low: 0.5,
    high: 0.7,
    evidence: 'rated output over what a household microwave takes from the wall; from memory',
  },
  cupCoefficient: {
    value: 17,
    low: 12,
    high: 25,
    unit: 'WPerM2K',
    evidence: 'free convection and radiation of a stirred cup; derived',
  },
  dropVolume: {
    value: 4e-8,
    low: 2e-8,
    high: 7e-8,
    unit: 'm3',
    evidence: 'span of dropper tips; weigh 50 drops',
  },
  colorantDensity: {
    value: 1100,
    low: 1000,
    high: 1600,
    unit: 'kgPerM3',
    evidence: 'pigment dispersed in plasticizer; from memory',
  },
  spoonDensity: {
    value: 400,
    low: 200,
    high: 800,
    unit: 'kgPerM3',
    evidence: 'level spoon of powder; from memory, weigh yours',
  },
  overpour: { value: 0.05, low: 0, high: 0.15, evidence: 'common practice, no source' },
  confidence: { value: 0.9, low: 0.8, high: 0.99, evidence: 'a choice, not a fact' },
  yieldMean: {
    value: 0.9,
    low: 0.8,
    high: 0.97,
    evidence: 'from memory; good share before there is a record',
  },
  yieldWeight: {
    value: 10,
    low: 2,
    high: 50,
    evidence: 'a choice: pieces that the assumed yield is worth',
  },
  leastDrops: {
    value: 8,
    low: 5,
    high: 20,
    evidence: 'a choice: fewer drops cannot be trimmed finely',
  },
  doseTolerance: { value: 0.1, low: 0.02, high: 0.2, evidence: 'a choice' },
} as const satisfies Readonly<Record<string, Default>>;
