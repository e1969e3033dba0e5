import type { DEFECT_KEYS } from '../../book/tables/pourLog.ts';
import type { SolvedLayer } from '../../heat/solver/solvedLayer.ts';
import type { UnitSystem } from '../../units/measures.ts';
import type { TearTest } from './logReadings.ts';

export type Defect = (typeof DEFECT_KEYS)[number];

/** A layer of a round as it was poured; degC. */
export interface LayerFigures {
  /** As the pattern names it: `vein` */
  readonly name: string;
  /** Its cup; absent where it was not read */
  readonly pour?: number;
  /** What its cup was to be poured at */
  readonly planned: number;
  /** Until it no longer moved; absent where the readings do not tell */
  readonly open?: SolvedLayer['open'];
}

/** A joint as it was poured, from the layer solver; degC, s. */
export interface JointFigures {
  readonly below: string;
  readonly above: string;
  /** From the pour below to the pour above */
  readonly gap: number;
  readonly earliest: SolvedLayer['earliest'];
  /** What the run sheet let the pour above follow after; absent where it had no window */
  readonly plannedEarliest?: number;
  readonly latest: SolvedLayer['latest'];
  /** Of the layer below when the one above landed, and what it needed for a bond */
  readonly surface: number;
  readonly surfaceNeeded: number;
  readonly contactTemperature: number;
  readonly tear?: TearTest;
}

/** Everything that the rules look at: what was read, what the models make of it, what was planned; degC, s. */
export interface RunFigures {
  readonly system: UnitSystem;
  readonly moldTop?: number;
  /** What the mold top was to read at the first pour */
  readonly topTarget: number;
  /** The hottest that the plate was to bring it to */
  readonly hottestTop: number;
  readonly bondTemperature: number;
  readonly lowestPour: number;
  readonly hardStop: number;
  readonly layers: readonly LayerFigures[];
  /** In a two-piece mold the faces between layers are not known well enough to be judged, so that it has no joints here */
  readonly isTwoPiece: boolean;
  /** As far up as the readings reach */
  readonly joints: readonly JointFigures[];
  /** Share of its heat budget that a cup uses in the run, by plan */
  readonly heatShare?: number;
  /** Sentences about doses above their material's limit */
  readonly overLimit: readonly string[];
  /** Headings of readings that are blank */
  readonly blanks: readonly string[];
}
