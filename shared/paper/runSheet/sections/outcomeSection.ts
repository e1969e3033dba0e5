import { DEFECT_KEYS, POUR_LOG, TEAR_TESTS } from '../../../book/tables/pourLog.ts';
import type { OrderPlan } from '../../../plan/planTypes.ts';
import { MEASURES } from '../../../units/measures.ts';
import { UNITS } from '../../../units/units.ts';
import type { RunIdentity, SheetCell, SheetSection } from '../runSheetTypes.ts';
import { textCell, writeCell } from '../textCell.ts';

/** A line for each round with the columns of the pour log: readings, gaps, good and bad by defect. */
export function outcomeSection(plan: OrderPlan): SheetSection {
  const degrees = UNITS[MEASURES.temperature[plan.system]].label;
  const pours = plan.layers.flatMap(({ order }, index) => [
    ...(index === 0 ? [] : [`Gap ${plan.layers[index - 1]?.order}-${order} min`]),
    `Pour ${order} ${degrees}`,
  ]);
  const defects = DEFECT_KEYS.map((key) => POUR_LOG.columns[key].heading);
  const headings = ['Round', `Mold top ${degrees}`, ...pours, 'Poured', 'Good', ...defects];
  const rounds = Array.from({ length: plan.pieces.rounds }, (_, index) => index + 1);
  const rows: SheetCell[][] = rounds.map((round) => [
    textCell(String(round), 'strong'),
    ...headings.slice(1).map(() => writeCell()),
  ]);
  return {
    name: 'outcome',
    heading: 'Each round as it came out',
    blocks: [{ kind: 'table', headings, widths: headings.map(() => 1), rows }],
  };
}

/** Tear test, weight, and who answers for the run. */
export function signOffSection(plan: OrderPlan, run: RunIdentity): SheetSection {
  // No box for "not tested": an empty row says that.
  const tests = TEAR_TESTS.filter((label) => label !== 'not tested').map((label) => ({
    label,
    cell: { kind: 'boxes', count: 1 } as const,
  }));
  return {
    name: 'sign-off',
    heading: 'Sign-off',
    blocks: [
      {
        kind: 'facts',
        facts: [
          // Stands at the end of the last page, which may have come apart from the first.
          { label: 'Run', cell: textCell(run.runId) },
          { label: 'Tear test', cell: textCell('') },
          ...tests,
          { label: 'Piece weight', cell: writeCell(plan.system === 'US' ? 'oz' : 'g') },
          { label: 'Checked by', cell: writeCell() },
        ],
      },
    ],
  };
}
