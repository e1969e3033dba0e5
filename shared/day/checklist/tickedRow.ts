/** A line of the checklist as it stands on its sheet. */
export interface TickedRow {
  readonly id: string;
  readonly isTicked: boolean;
  /** When it was ticked [s]; absent where nobody and nothing wrote it down */
  readonly at?: number;
  /** "" where it is not known */
  readonly who: string;
}
