import { nameKey } from '../../book/bookIndex.ts';
import { type MissingCells, optional } from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';
import { CUP_SHARE } from '../../heat/cupTimeInBand.ts';
import { dropVolume } from '../../heat/fit/dropVolume.ts';
import { microwaveEfficiency } from '../../heat/fit/microwaveEfficiency.ts';
import { pooledFigure } from '../../heat/fit/pooledFigure.ts';
import {
  type MeasuredFigure,
  type PuckTrial,
  setTemperatureFromPucks,
} from '../../heat/fit/setTemperatureFromPucks.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import type { FigureKey } from '../proposal.ts';
import type { BenchTrialRow } from '../trialBook.ts';
import { type BenchGroup, benchNumbers, measured } from './gatherBench.ts';

/** What the measurements of one thing give. */
export interface BenchFound {
  readonly figure: Exclude<FigureKey, 'contact'>;
  readonly of: string;
  readonly measured: MeasuredFigure;
  /** The rows that it rests on */
  readonly rows: readonly BenchTrialRow[];
}

/** Standard deviations of a careful trial: probe in a stirred cup [K], stopwatch [s], mass as a share. From memory. */
const CUP_READING = 2;
const STOPWATCH = 1;
const MASS_SHARE = 0.01;
/** Of a scale that shows hundredths of a gram [kg], and of one drop as a share of it. From memory. */
const SCALE = 2e-5;
const DROP_SPREAD = 0.1;

/** The figure of a group of measurements, or undefined, with the gaps noted, when no row can be used. */
export function proposeBench(gaps: MissingCells, group: BenchGroup): BenchFound | undefined {
  switch (group.kind) {
    case 'puck':
      return fromPucks(gaps, group);
    case 'microwave':
      return pooled(group, 'microwaveEfficiency', (row) => fromHeating(gaps, row));
    case 'drops':
      return pooled(group, 'dropVolume', (row) => fromDrops(gaps, row, group.material));
  }
}

function pooled(
  { rows, material }: BenchGroup,
  figure: BenchFound['figure'],
  measure: (row: BenchTrialRow) => MeasuredFigure | undefined,
): BenchFound | undefined {
  const used: BenchTrialRow[] = [];
  const figures: MeasuredFigure[] = [];
  for (const row of rows) {
    const one = measure(row);
    if (one === undefined) continue;
    used.push(row);
    figures.push(one);
  }
  if (used.length === 0) return undefined;
  return { figure, of: material, measured: pooledFigure(figures), rows: used };
}

/** All pucks together: their scatter is part of the error. */
function fromPucks(gaps: MissingCells, { rows, material }: BenchGroup): BenchFound | undefined {
  const pucks = rows.flatMap((row) => {
    const puck = puckOf(gaps, row);
    const alone = puck && measured(gaps, row, () => setTemperatureFromPucks([puck]));
    return puck && alone ? [{ row, puck }] : [];
  });
  if (pucks.length === 0) return undefined;
  const { value, standardError } = setTemperatureFromPucks(pucks.map(({ puck }) => puck));
  return {
    figure: 'setTemperature',
    of: material,
    measured: { value, standardError },
    rows: pucks.map(({ row }) => row),
  };
}

function puckOf(gaps: MissingCells, row: BenchTrialRow): PuckTrial | undefined {
  const keys = ['seconds', 'tiltEvery', 'layerThickness', 'moldTop', 'cupTemperature'] as const;
  const it = benchNumbers(gaps, row, keys);
  if (it === undefined) return undefined;
  const puck = {
    thickness: it.layerThickness,
    startTemperature: it.cupTemperature - gaps.index.book.shop.pourLoss,
    moldTemperature: it.moldTop,
  };
  return { puck, seconds: it.seconds, interval: it.tiltEvery };
}

/** The cup counts as the share of its contents that the plan counts it as. */
function fromHeating(gaps: MissingCells, row: BenchTrialRow): MeasuredFigure | undefined {
  const keys = ['weight', 'startTemperature', 'endTemperature', 'seconds'] as const;
  const it = benchNumbers(gaps, row, keys);
  if (it === undefined) return undefined;
  const specificHeat = DEFAULTS.specificHeat.value * (1 + CUP_SHARE);
  return measured(gaps, row, () =>
    microwaveEfficiency({
      bodies: [{ mass: it.weight, specificHeat }],
      start: it.startTemperature,
      end: it.endTemperature,
      seconds: it.seconds,
      ratedPower: gaps.index.book.shop.microwavePower,
      temperatureError: CUP_READING,
      timeError: STOPWATCH,
      massShareError: MASS_SHARE,
    }),
  );
}

function fromDrops(
  gaps: MissingCells,
  row: BenchTrialRow,
  material: string,
): MeasuredFigure | undefined {
  const it = benchNumbers(gaps, row, ['weight', 'drops']);
  const bottle = gaps.index.materials.get(nameKey(material));
  if (it === undefined || bottle === undefined) return undefined;
  const own = optional(gaps, TABLES.materials, bottle, 'density');
  const density = own ?? DEFAULTS.colorantDensity.value;
  return measured(gaps, row, () =>
    dropVolume({
      drops: it.drops,
      mass: it.weight,
      density,
      scaleError: SCALE,
      dropSpread: DROP_SPREAD,
    }),
  );
}
