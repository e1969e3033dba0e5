import { causeCells, LAST_BAD } from '../../outcomes/causes/causeCells.ts';
import { PLAN_SHEETS, readPlanSheets } from '../book/planSheets.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';

/** What went wrong in a run, from the whole book. */
export const POUR_CAUSE: TableFunction = {
  kind: 'table',
  name: 'POUR_CAUSE',
  family: 'quality',
  about: 'Likely causes of what came out bad in a run, with the evidence of its own readings.',
  params: {
    run: {
      kind: 'text',
      about: `A run of Pour log, or ${LAST_BAD}: the last round that came out bad.`,
    },
    ...PLAN_SHEETS,
  },
  returns: [
    {
      name: 'table',
      about:
        'Headings, then for each round and defect the likely causes, the likeliest first: what the record shows and what to do. Where heat is not the cause it says so and names what to check.',
      kind: 'text',
    },
  ],
  notes:
    'Each round is solved anew from its own mold top, cup temperatures and gaps; a cause is named only where a figure lies outside its limit. In two-piece molds the joints are not judged. It is a likely cause, not a proof. Hot metal and plastisol burn: raise heat in small steps, stay below the hard stop.',
  compute: (ranges, choices) => {
    return causeCells(readPlanSheets(ranges), choices['run'] ?? '');
  },
};
