import type { UnitSystem } from '../../units/measures.ts';

/** Something that a person, plate, mold or oven is taken for [s]. */
export interface TimetableBar {
  readonly from: number;
  readonly to: number;
  /** Place in the list of orders */
  readonly order: number;
  /** What is done, where there is room to say it */
  readonly text: string;
}

export interface TimetableRow {
  readonly name: string;
  readonly bars: readonly TimetableBar[];
}

export interface TimetableOrder {
  readonly name: string;
  /** [s] */
  readonly due?: number;
  readonly finish: number;
  /** Past its due [s] */
  readonly late: number;
}

/** The hours of one day that are shown [s]. */
export interface TimetableDay {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** What the timetable shows: who and what is taken when, all times from midnight before the first day of the plan. */
export interface Timetable {
  readonly kind: 'timetable';
  readonly title: string;
  readonly system: UnitSystem;
  /** In order, without overlap */
  readonly days: readonly TimetableDay[];
  readonly groups: readonly { readonly name: string; readonly rows: readonly TimetableRow[] }[];
  readonly orders: readonly TimetableOrder[];
  readonly now?: number;
}
