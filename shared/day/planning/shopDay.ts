import type { DayRules } from '../../book/settings/dayRules.ts';
import type { Span } from '../../schedule/schedulingTypes.ts';
import type { PlannedRun } from './plannedRun.ts';

export const SKILLS = ['color', 'cook', 'pour', 'finish'] as const;

/** Finishing is demolding, inspecting and packing; laying out and cleaning is for everybody. */
export type Skill = (typeof SKILLS)[number];

export interface Person {
  readonly name: string;
  readonly skills: readonly Skill[];
  /** Without breaks, seconds from midnight before the first day [s] */
  readonly hours: readonly Span[];
}

/** A circuit's load, for what is plugged in there; a circuit that is not named carries it. */
export interface Plug {
  readonly watts: number;
  readonly circuit: string;
}

export interface DayPlate {
  readonly name: string;
  /** Usable [m2] */
  readonly area: number;
  /** Whether a second round may stand beside the first where both fit: its setting and heat-up are then taken as unchanged. */
  readonly rounds: 'one' | 'as fit';
  readonly plug?: Plug;
}

interface DayMold {
  readonly name: string;
  readonly owned: number;
  /** What one copy covers of a plate [m2] */
  readonly footprint: number;
}

/** What the shop has in the days planned; all times are seconds from midnight before the first day. */
export interface ShopDay {
  readonly people: readonly Person[];
  readonly plates: readonly DayPlate[];
  readonly molds: readonly DayMold[];
  readonly ovens: readonly { readonly name: string; readonly plug?: Plug }[];
  readonly circuits: readonly { readonly name: string; readonly watts: number }[];
  readonly cups: number;
  readonly rules: DayRules;
}

export interface DayOrder {
  readonly run: PlannedRun;
  /** Packed by then [s]; without one it only counts for the finish */
  readonly due?: number;
  /** Of a second late, against the other orders; 1 if left out */
  readonly weight?: number;
  /** Not before this [s]; 0 if left out */
  readonly release?: number;
  /** Plates alike on which the plan's heat-up holds; the plan's own plate if left out */
  readonly plates?: readonly string[];
  /** Orders with the same colors share a clean-up; pattern and version if left out */
  readonly colors?: string;
}
