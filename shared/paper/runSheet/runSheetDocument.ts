import type { OrderPlan } from '../../plan/planTypes.ts';
import type { RunIdentity, RunSheetDocument, SheetFact, SheetSection } from './runSheetTypes.ts';
import { cautionsSection } from './sections/cautionsSection.ts';
import { checklistsSection } from './sections/checklistsSection.ts';
import { cupsSection } from './sections/cupsSection.ts';
import { layersSection } from './sections/layersSection.ts';
import { outcomeSection, signOffSection } from './sections/outcomeSection.ts';
import { picturesSection } from './sections/picturesSection.ts';
import { plateSection } from './sections/plateSection.ts';
import { textCell, writeCell } from './textCell.ts';

/**
 * The run sheet of one order as plain data: what is read, ticked and written, in reading order, in the shop's units.
 * It has no look; print page, print dialog and the *Run sheet* tab each draw it.
 * @param plan - of the order
 * @param run - the run's id, and its date as it should print
 */
export function runSheetDocument(plan: OrderPlan, run: RunIdentity): RunSheetDocument {
  return {
    title: 'Run sheet',
    shopName: plan.shopName,
    header: headerFacts(plan, run),
    sections: [
      cautionsSection(plan),
      ...notesSection(plan),
      cupsSection(plan),
      plateSection(plan),
      layersSection(plan),
      checklistsSection(plan),
      outcomeSection(plan),
      signOffSection(plan, run),
      picturesSection(plan, run),
    ],
  };
}

function headerFacts(plan: OrderPlan, run: RunIdentity): readonly SheetFact[] {
  const molds = plan.moldsInUse === 1 ? plan.mold : `${plan.moldsInUse} × ${plan.mold}`;
  return [
    { label: 'Order', cell: textCell(plan.order, 'key') },
    { label: 'Pour', cell: textCell(String(plan.pieces.toPour), 'key') },
    { label: 'Good wanted', cell: textCell(String(plan.quantity), 'key') },
    { label: 'Pattern', cell: textCell(`${plan.pattern} v${plan.version}`, 'strong') },
    { label: 'Mold', cell: textCell(molds, 'strong') },
    ...(plan.due === undefined ? [] : [{ label: 'Due', cell: textCell(plan.due) }]),
    { label: 'Run', cell: textCell(run.runId) },
    { label: 'Date', cell: textCell(run.date) },
    { label: 'Initials', cell: writeCell() },
  ];
}

/** What the pourer must read before anything else: the order's notes and the plan's warnings, where there are any. */
function notesSection(plan: OrderPlan): readonly SheetSection[] {
  const lines = [
    ...(plan.notes === '' ? [] : [`Note: ${plan.notes}`]),
    ...plan.warnings.filter((one) => one.about !== 'pieces').map((one) => one.text),
  ];
  if (lines.length === 0) return [];
  return [{ name: 'notes', heading: 'Read first', blocks: [{ kind: 'lines', lines }] }];
}
