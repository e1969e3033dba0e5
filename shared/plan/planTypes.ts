import type { WorkTimes } from '../batch/minutesOfWork.ts';
import type { Missing } from '../book/missingCells.ts';
import type { YieldPrior } from '../quality/yields/yieldPrior.ts';
import type { UnitSystem } from '../units/measures.ts';
import type { RunEnergy } from './amounts/runEnergy.ts';
import type { HeatDetail } from './uncertainty/heatDetail.ts';

/** A plan that works but needs an eye; `about` sorts it to its part of the run sheet. */
export interface Warning {
  readonly about: 'pieces' | 'cups' | 'heat' | 'layers' | 'materials' | 'time';
  readonly text: string;
}

/** Engine units throughout: m3, kg, degC, s; fractions. */
export interface DosePlan {
  readonly material: string;
  readonly lot: string;
  /** What to put in one cup. */
  readonly measure:
    | { readonly kind: 'drops'; readonly drops: number; readonly error: number }
    | { readonly kind: 'powder'; readonly spoons: string; readonly error: number }
    | { readonly kind: 'scale' };
  /** Mass in one cup [kg]. */
  readonly mass: number;
  /** What would make it measurable by drops, when it is not. */
  readonly proposals: readonly string[];
}

export interface LayerPlan {
  readonly order: number;
  readonly layer: string;
  readonly base: string;
  readonly lot: string;
  readonly share: number;
  /** Height of its surface as a share of the cavity's depth (two-piece: of its height upright); worked out when the pattern gives shares. */
  readonly fillMark: number;
  readonly cups: number;
  /** In one cup, cold [m3] and [kg]. */
  readonly cupVolume: number;
  readonly cupMass: number;
  readonly totalMass: number;
  readonly doses: readonly DosePlan[];
  readonly pourTemperature: number;
  /** What a leftover of it has behind it at the end of the run, as seconds at 170 °C [s] */
  readonly heatUsed: number;
  /** Timing in the round; seconds from the first pour of the round. */
  readonly run: LayerRun;
  /** With the layer below, as planned; absent for the first. */
  readonly joint?: LayerJoint;
  /** Until the layer no longer moves. */
  readonly openTime:
    | { readonly kind: 'seconds'; readonly seconds: number }
    | { readonly kind: 'stays open' };
  /** Since the pour of the layer before; absent for the first. Seconds. */
  readonly window?: LayerWindow;
}

/** One layer through all cavities of a round, one after the other in the same order each time. */
export interface LayerRun {
  /** Pour of the first and of the last cavity [s] */
  readonly firstAt: number;
  readonly lastAt: number;
  /** From the first pour to the end of the last, stops included [s] */
  readonly passTime: number;
  /** Times that the cup goes back to heat before the round's layer is whole */
  readonly stops: number;
  /** Since the layer below in the same cavity: the shortest and the longest of the round [s]; absent for the first layer */
  readonly wait?: { readonly shortest: number; readonly longest: number };
}

/** The joint between a layer and the one below, poured as planned. */
interface LayerJoint {
  /** [degC] */
  readonly contactTemperature: number;
  /** [s] */
  readonly secondsAboveBond: number;
  readonly verdict: 'bonds' | 'peels';
}

/** When this layer may follow the one before. */
export type LayerWindow =
  | { readonly kind: 'between'; readonly earliest: number; readonly latest: number }
  | { readonly kind: 'from'; readonly earliest: number }
  /** At no moment: the layer below never carries it, or it comes out too cool to bond. */
  | { readonly kind: 'none'; readonly why: 'stays soft' | 'too cool'; readonly because: string };

export interface PlatePlan {
  readonly kind: 'reachable';
  readonly plate: string;
  /** Dial setting [degC]. */
  readonly setting: number;
  /** The mold top must read this at the first pour [degC]. */
  readonly topTarget: number;
  readonly boilingPoint: number;
  /** Where the mold top would settle at this setting, under its lid where it has one [degC]. */
  readonly plateau: number;
  /** Where it would settle once its lid is off [degC]; absent without a lid. */
  readonly lidOff?: number;
  /** Spare time between a hot mold and the first pour [s], from the shop's settings. */
  readonly readyWait: number;
  /** From switching a cold plate on, mold on it, to the top at its target [s]. */
  readonly heatUp: number;
  /** Clock times, minutes after midnight of the day of the run (negative the day before); absent when no first pour is given. */
  readonly onAt?: number;
  /** When the top should read its target; the shop's wait then runs until the first pour. */
  readonly readyAt?: number;
}

export interface PiecesPlan {
  readonly toPour: number;
  readonly rounds: number;
  readonly perRound: number;
  readonly expectedGood: number;
  readonly attained: number;
  readonly confidence: number;
  /** The record it rests on. */
  readonly evidence: { readonly good: number; readonly poured: number };
  /** What is expected without it, and whether that comes from the shop's log or from its setting. */
  readonly prior: YieldPrior;
  /** Good share that the record and the prior give together. */
  readonly expectedYield: number;
}

export interface OrderPlan {
  readonly kind: 'plan';
  readonly order: string;
  readonly row: number;
  readonly system: UnitSystem;
  readonly shopName: string;
  readonly customer: string;
  readonly mold: string;
  readonly moldKind: 'open' | 'two-piece';
  readonly pattern: string;
  readonly version: number;
  readonly quantity: number;
  readonly due?: string;
  readonly pourOn?: string;
  readonly firstPour?: number;
  readonly notes: string;
  readonly pieces: PiecesPlan;
  readonly layers: readonly LayerPlan[];
  /** All layers, all cups, cold. */
  readonly plastisolVolume: number;
  readonly plastisolMass: number;
  readonly cups: number;
  readonly plate: PlatePlan | { readonly kind: 'unreachable'; readonly because: string };
  /** One cup from its pour temperature down to the lowest [s], and how many cavities it fills in that time with what it holds. */
  readonly cupTime: number;
  readonly cavitiesPerCup: number;
  /** Microwave running time for one cup from cold [s], and how many short bursts that makes. */
  readonly cookTime: number;
  readonly cookBursts: number;
  /** The whole cup is brought to this, stirred, before it may be poured [degC]. */
  readonly cookTemperature: number;
  /** Below this a cup goes back to be heated [degC]. */
  readonly lowestPour: number;
  /** No cup of this order ever goes above this: the lower of the shop's stop and the materials' maxima [degC]. */
  readonly hardStop: number;
  /** Times one cup is heated in the run, the first cook included. */
  readonly heatings: number;
  /** Heat that a plastisol bears in all, as seconds at 170 °C [s] */
  readonly heatBudget: number;
  /** Share of the heat budget that one cup uses in the run; above 1 is too much. */
  readonly heatUsed: number;
  /** Copies of the mold on the plate in one round. */
  readonly moldsInUse: number;
  /** Pouring one layer into every cavity of a round, without a stop [s]. */
  readonly layerTime: number;
  /** Pieces come out below this [degC]. */
  readonly demoldTemperature: number;
  /** Off the plate until pieces may come out [s]. */
  readonly coolTime: number;
  readonly minutesOfWork: number;
  /** The same by what is done [s] */
  readonly work: WorkTimes;
  readonly energy: RunEnergy;
  /** Left out where only columns are wanted. */
  readonly detail?: HeatDetail;
  readonly warnings: readonly Warning[];
}

/** What a row of Orders leads to. */
export type PlanResult =
  | OrderPlan
  | {
      readonly kind: 'missing';
      readonly order: string;
      readonly row: number;
      readonly missing: readonly Missing[];
    };
