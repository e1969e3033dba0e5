import type { AnswerBand } from '../../uncertainty/band.ts';
import type { HeatFigures } from '../heat/heatFigures.ts';

/** Where nine of ten draws of what is not known exactly fall; an end left out is open: any time, never, or beyond the time solved. */
export type Band = AnswerBand<keyof HeatFigures>;

/** How sure the times of one layer are [s], and its contact temperature [degC]. */
export interface LayerBands {
  readonly open: Band;
  /** Of the window on the layer below; absent for the first layer */
  readonly earliest?: Band;
  readonly latest?: Band;
  readonly contact?: Band;
}

/** What panel and paper show beyond the figures: how sure they are, and the curves behind them. */
export interface HeatDetail {
  /** Draws behind the bands, and the seed that fixes them */
  readonly draws: number;
  readonly seed: number;
  /** Minutes to a hot mold [s] and where its top settles [degC]; absent where the target is never reached */
  readonly heatUp?: Band;
  readonly plateau?: Band;
  readonly cupTime: Band;
  readonly layers: readonly LayerBands[];
  /** Plate and mold top from switch-on, with the band of the top [s], [degC] */
  readonly heatCourse: readonly {
    readonly seconds: number;
    readonly plate: number;
    readonly top: number;
    readonly low: number;
    readonly high: number;
  }[];
  /** What was read of this mold on this plate in the shop's heat trials */
  readonly readings: readonly {
    readonly trial: string;
    readonly seconds: number;
    readonly top: number;
  }[];
  /** Mean and upper face of each layer over the round [s], [degC], bottom first */
  readonly layerCourses: readonly (readonly {
    readonly time: number;
    readonly mean: number;
    readonly surface: number;
  }[])[];
  /** Through the stack [m] at a few moments [s] */
  readonly profiles: readonly {
    readonly time: number;
    readonly heights: readonly number[];
    readonly temperatures: readonly number[];
  }[];
  /** Tops of the layers, bottom first [m] */
  readonly jointHeights: readonly number[];
}
