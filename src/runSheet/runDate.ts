import type { OrderPlan } from '../../shared/plan/plan.ts';
import { workbook } from '../platform/workbook.ts';

/** The day a run sheet prints: the day of the run, else today in the workbook's time zone. */
export function runDate({ pourOn }: Pick<OrderPlan, 'pourOn'>): string {
  if (pourOn !== undefined) return pourOn;
  return Utilities.formatDate(new Date(), workbook().getSpreadsheetTimeZone(), 'yyyy-MM-dd');
}
