import type { PourDay } from '../../day/shop/pourDay.ts';
import type { ReplannedDay } from '../../day/shop/replannedDay.ts';

/** A pour day as it was planned, or as it goes on after the ticks. */
export type DayShown = PourDay | ReplannedDay;

/** What the printed page of a pour day shows. */
export interface DayDocument {
  readonly shopName: string;
  readonly day: DayShown;
}
