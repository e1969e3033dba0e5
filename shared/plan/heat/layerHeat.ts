import { cavityShapeFactor } from '../../heat/cavityShapeFactor.ts';
import { layerContactTemperature } from '../../heat/contactTemperature.ts';
import type { LayerStack, Pour, Resolution } from '../../heat/solver/layerStack.ts';
import type { MoldCourse } from '../../heat/solver/moldCourse.ts';
import { secondsAbove } from '../../heat/solver/secondsAbove.ts';
import type { SolvedLayer } from '../../heat/solver/solvedLayer.ts';
import { type SolvedStack, solveLayers } from '../../heat/solver/solveLayers.ts';
import {
  type CavitySection,
  closedThickness,
  effectiveThickness,
} from '../facts/effectiveThickness.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { LayerFacts } from '../facts/findPattern.ts';
import type { LayerFill } from '../facts/layerShares.ts';
import { openAspect } from '../facts/openAspect.ts';
import type { HeatFigures } from './heatFigures.ts';

/** What is poured into what. */
export interface Filling {
  readonly mold: MoldFacts;
  readonly layers: readonly LayerFacts[];
  readonly fills: readonly LayerFill[];
}

export interface LayerHeatRun {
  /** The mold from the first pour on */
  readonly course: MoldCourse;
  readonly figures: HeatFigures;
  /** When each layer lands in the cavity looked at, from its first pour [s]; layers beyond the last one are not poured yet */
  readonly pouredAt: readonly number[];
  /** `quick` is four times as fast and within 2 % of any time, for draws; `exact` within 0.5 % */
  readonly effort: 'exact' | 'quick';
  /** Moments at which the profile through the stack is wanted [s]; open molds only */
  readonly profileTimes?: readonly number[];
}

const RESOLUTION: Readonly<Record<LayerHeatRun['effort'], Resolution>> = {
  exact: { cellsPerLayer: 12, stepShare: 0.1, longestStep: 30 },
  quick: { cellsPerLayer: 6, stepShare: 0.2, longestStep: 90 },
};

/** How long after its last pour a run is followed [s]: the shop still pours a layer 20 minutes later. */
export const FOLLOWED = 20 * 60;

/**
 * Life of the layers of one cavity from the solver, each up to 20 minutes after the last pour.
 *
 * Open cavities are a stack: its thickness is volume over wetted metal area up to each fill mark, its shape factor that of the
 * fill so far. In a two-piece mold filled upright metal is all around and no surface is free: every layer cools by its whole
 * section, and the innermost plastic, the last to cool, stands for its surface, so both ends of a window err late.
 */
export function layerHeat(
  filling: Filling,
  run: LayerHeatRun,
): Pick<SolvedStack, 'layers' | 'profiles'> {
  return filling.mold.kind === 'two-piece'
    ? { layers: uprightLayers(filling, run), profiles: [] }
    : solveLayers({ ...shared(run), ...openStack(filling, run) });
}

/** Thickness of each layer of the slab that an open cavity cools like, bottom first [m]. */
export function cavityThicknesses({ mold, layers, fills }: Filling): readonly number[] {
  const section = sectionOf(mold);
  const depths = fills.map(({ mark }) => effectiveThickness(section, mark));
  const whole = depths[layers.length - 1] ?? 0;
  return layers.map((_, index) => {
    // Above its middle an ellipse closes over the plastic and adds more metal than depth: there the volume is shared out.
    if (mold.profile === 'ellipse') return whole * (fills[index]?.share ?? 0);
    return (depths[index] ?? 0) - (depths[index - 1] ?? 0);
  });
}

/** The next layer's temperature as it lands [degC]. */
function landing(layer: LayerFacts, { pourLoss }: HeatFigures): number {
  return layer.pourTemperature - pourLoss;
}

function sectionOf(mold: MoldFacts): CavitySection {
  return { profile: mold.profile, width: mold.cavityWidth, depth: mold.cavityDepth };
}

function shared({ course, figures, effort, pouredAt }: LayerHeatRun) {
  return {
    mold: course,
    air: { coefficient: figures.surfaceCoefficient, airTemperature: figures.localAirTemperature },
    wallCoefficient: figures.meltToMold,
    until: (pouredAt[pouredAt.length - 1] ?? 0) + FOLLOWED,
    firmTemperature: figures.firmTemperature,
    bondTemperature: figures.bondTemperature,
    resolution: RESOLUTION[effort],
  } satisfies Partial<LayerStack>;
}

/** A set temperature from the shop's own puck trials stands against the drawn or usual one. */
function plasticOf({ base }: LayerFacts, figures: HeatFigures) {
  return {
    conductivity: figures.conductivity,
    density: figures.hotDensity,
    specificHeat: figures.specificHeat,
    setTemperature: base.record.setTemperature ?? figures.setTemperature,
  } satisfies Partial<Pour>;
}

function openStack(
  filling: Filling,
  { figures, pouredAt, profileTimes = [] }: LayerHeatRun,
): Pick<LayerStack, 'pours' | 'followingPour' | 'profileTimes'> {
  const { mold, layers, fills } = filling;
  const section = sectionOf(mold);
  const thicknesses = cavityThicknesses(filling);
  const pours = pouredAt.flatMap((time, index): Pour[] => {
    const layer = layers[index];
    const thickness = thicknesses[index];
    if (layer === undefined || thickness === undefined) return [];
    const aspect = openAspect(section, fills[index]?.mark ?? 1);
    const shapeFactor = cavityShapeFactor(section.profile, aspect);
    const temperature = landing(layer, figures);
    return [{ ...plasticOf(layer, figures), time, thickness, temperature, shapeFactor }];
  });
  return { pours, profileTimes, ...following(layers, figures, pours.length) };
}

function following(layers: readonly LayerFacts[], figures: HeatFigures, poured: number) {
  const next = layers[poured];
  return next === undefined ? {} : { followingPour: landing(next, figures) };
}

function uprightLayers({ mold, layers }: Filling, run: LayerHeatRun): readonly SolvedLayer[] {
  const { figures, pouredAt } = run;
  const section = sectionOf(mold);
  const slab = {
    thickness: closedThickness(section),
    shapeFactor: cavityShapeFactor(section.profile, section.depth / section.width),
  };
  const all = shared(run);
  const alone = (pour: Omit<Pour, 'thickness'>, more: Partial<LayerStack>) =>
    solveLayers({
      ...all,
      air: { ...all.air, coefficient: 0 },
      pours: [{ ...slab, ...pour }],
      ...more,
    });
  return pouredAt.flatMap((time, index) => {
    const layer = layers[index];
    if (layer === undefined) return [];
    const next = pouredAt[index + 1];
    const plastic = plasticOf(layer, figures);
    const { layers: solved, profiles } = alone(
      { ...plastic, time, temperature: landing(layer, figures) },
      {
        profileTimes: next === undefined ? [] : [next],
        ...following(layers, figures, index + 1),
      },
    );
    const above = layers[index + 1];
    const atNext = profiles[0]?.temperatures ?? [];
    const surfaceBefore = atNext[atNext.length - 1];
    if (next === undefined || above === undefined || surfaceBefore === undefined) return solved;
    const contact = layerContactTemperature(surfaceBefore, landing(above, figures));
    // The middle of a joint across the section cools like a section poured at the contact temperature.
    const [after] = alone({ ...plastic, time: next, temperature: contact }, {}).layers;
    const { bondTemperature } = figures;
    const joint = {
      surfaceBefore,
      contactTemperature: contact,
      secondsAboveBond: secondsAbove(after?.readings ?? [], bondTemperature),
      verdict: contact >= bondTemperature ? ('bonds' as const) : ('peels' as const),
    };
    return solved.map((one) => ({ ...one, joint }));
  });
}
