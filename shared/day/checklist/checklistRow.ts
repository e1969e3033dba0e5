/** One line of the checklist: a task of the day, or a pause at which everybody stops and checks. */
export interface ChecklistRow {
  /** Different on every line, the same in every plan of the same order */
  readonly id: string;
  readonly order: string;
  /** As planned [s], from midnight before the first day */
  readonly from: number;
  /** Absent for a pause */
  readonly to?: number;
  /** Not to begin (a layer) or to end (packing) later than this [s] */
  readonly latest?: number;
  /** "" for a pause and for what goes on by itself */
  readonly person: string;
  readonly text: string;
}
