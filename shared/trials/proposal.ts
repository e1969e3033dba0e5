import type { Missing } from '../book/missingCells.ts';
import type { ContactFit, ContactRemark } from '../heat/fit/contactFit.ts';
import type { MeasuredFigure } from '../heat/fit/setTemperatureFromPucks.ts';
import type { BondFit } from '../quality/bond/bondFit.ts';
import type { UnitSystem } from '../units/measures.ts';
import type { BondPictured, HeatTrialPictured } from './trialPictureTypes.ts';

/** What a shop can measure for itself: of a plate, a plastisol, a bottle, its microwave, its joints. */
export type FigureKey =
  | 'contact'
  | 'setTemperature'
  | 'dropVolume'
  | 'microwaveEfficiency'
  | 'bondTemperature';

/** A trial that a figure rests on. */
export interface TrialUsed {
  readonly trial: string;
  /** `2026-11-02`; absent when none was written */
  readonly date?: string;
}

/** A reading of a mold top beside the curve. */
export interface ReadingOff {
  readonly trial: string;
  /** Of Heat trials */
  readonly row: number;
  /** [s], [degC] */
  readonly seconds: number;
  readonly top: number;
  /** Reading less curve [K]; absent where nothing was fitted */
  readonly off?: number;
}

/** One heating, drawn: trials that were alike share one. */
export interface TrialPicture extends HeatTrialPictured {
  readonly readings: readonly ReadingOff[];
}

type NoFit = Extract<ContactFit, { readonly kind: 'no fit' }>['because'];

/** What the trials give, or why they give nothing yet; engine units. */
export type TrialResult =
  | {
      readonly kind: 'fitted';
      readonly figure: MeasuredFigure;
      /** Measurements or readings that it rests on */
      readonly count: number;
      /** Of a contact only: heat loss over the published one, where the readings tell it */
      readonly heatLoss?: MeasuredFigure;
      /** Of a contact only: what was taken for the loss where they do not */
      readonly assumedLoss?: number;
      readonly remarks: readonly ContactRemark[];
      /** Of torn joints only: the curve, its limits and what weakens it */
      readonly bond?: Extract<BondFit, { readonly kind: 'fitted' }>;
    }
  | { readonly kind: 'no fit'; readonly because: NoFit }
  /** Torn joints that give no figure, or only a limit of one */
  | { readonly kind: 'no bond'; readonly fit: Exclude<BondFit, { readonly kind: 'fitted' }> }
  /** A fitted figure that its cell would refuse, in a sentence of `describe` */
  | { readonly kind: 'beyond'; readonly text: string }
  /** It was measured once; the rows are gone */
  | { readonly kind: 'no trials' };

/** The older figure that can come back. */
export type WayBack =
  | {
      readonly kind: 'ready';
      /** Of Measured figures, to be taken back */
      readonly entry: string;
      /** Absent where the cell was blank */
      readonly before?: number;
      readonly trials: string;
      readonly date?: string;
    }
  | { readonly kind: 'changed by hand' };

/** A measured figure beside the one in use; engine units. */
export interface Proposal {
  readonly figure: FigureKey;
  /** As Plates or Materials writes it; `""` for the shop */
  readonly of: string;
  readonly present: { readonly value: number; readonly from: 'own' | 'default' };
  readonly result: TrialResult;
  /** Whether every cell already holds what the trials give. */
  readonly isInUse: boolean;
  readonly trials: readonly TrialUsed[];
  readonly pictures: readonly (TrialPicture | BondPictured)[];
  readonly back?: WayBack;
}

/** All that the book's trials say. */
export interface TrialsFound {
  readonly system: UnitSystem;
  readonly proposals: readonly Proposal[];
  /** Rows that were left out, and why. */
  readonly problems: readonly Missing[];
}

/** What a group of trials gives, before it is held against the book. */
export type Found = Pick<Proposal, 'figure' | 'of' | 'result' | 'trials' | 'pictures'>;
