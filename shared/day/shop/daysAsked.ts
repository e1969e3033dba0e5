/** The days that are planned, one after the other. */
export interface DaysAsked {
  /** `yyyy-mm-dd` */
  readonly firstDay: string;
  /** Whole, >= 1; days on which nobody works count too */
  readonly days: number;
}
