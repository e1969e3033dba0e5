import { HEAT_REFERENCE } from '../../../heat/heatUsed.ts';
import type { DosePlan, LayerPlan, OrderPlan } from '../../../plan/planTypes.ts';
import {
  countText,
  gramsText,
  listText,
  temperatureText,
  volumeText,
} from '../../../words/quantityText.ts';
import type { SheetBlock, SheetCell, SheetSection } from '../runSheetTypes.ts';
import { textCell, writeCell } from '../textCell.ts';

/** More boxes than this no longer fit a row; the tally is written instead. */
const MOST_BOXES = 8;

/** What goes into each cup: one line for the base and for each dose, a box for each cup. */
export function cupsSection(plan: OrderPlan): SheetSection {
  const rows = plan.layers.flatMap((layer) => rowsOf(layer, plan));
  const table: SheetBlock = {
    kind: 'table',
    headings: ['Layer', 'Material', 'Lot', 'In each cup', 'Cups', 'Actual'],
    widths: [15, 35, 17, 31, 15, 10],
    rows,
  };
  return {
    name: 'cups',
    heading: `${countText(plan.cups, 'cup')}, ${volumeText(plan.plastisolVolume, plan.system)} of plastisol (${gramsText(plan.plastisolMass)})`,
    blocks: [table, { kind: 'lines', lines: [...proposalLines(plan), leftoverLine(plan)] }],
  };
}

function rowsOf(layer: LayerPlan, plan: OrderPlan): readonly (readonly SheetCell[])[] {
  const base = [
    textCell(`${layer.order} ${layer.layer}`, 'strong'),
    textCell(layer.base),
    textCell(layer.lot, 'small'),
    {
      kind: 'text',
      text: gramsText(layer.cupMass),
      size: 'strong',
      note: volumeText(layer.cupVolume, plan.system),
    } as const,
    ticks(layer.cups),
    writeCell(),
  ];
  const doses = layer.doses.map((dose) => [
    textCell(''),
    textCell(dose.material),
    textCell(dose.lot, 'small'),
    doseCell(dose),
    ticks(layer.cups),
    writeCell(),
  ]);
  return [base, ...doses];
}

function ticks(count: number): SheetCell {
  return count > MOST_BOXES ? writeCell(`of ${count}`) : { kind: 'boxes', count };
}

/** A dose as it is measured: whole drops, grams with the nearest spoon, or grams. */
function doseCell(dose: DosePlan): SheetCell {
  if (dose.measure.kind === 'drops')
    return textCell(countText(dose.measure.drops, 'drop'), 'strong');
  const grams = gramsText(dose.mass);
  if (dose.measure.kind === 'scale') return textCell(grams, 'strong');
  return { kind: 'text', text: grams, size: 'strong', note: dose.measure.spoons };
}

/** A leftover goes on with the heat it has behind it: whoever melts it again enters that in Materials. */
function leftoverLine({ layers, heatBudget, system }: OrderPlan): string {
  const used = layers.map((layer) => `${layer.layer} ${Math.ceil(layer.heatUsed / 60)}`);
  const budget = Math.round(heatBudget / 60);
  const reference = temperatureText(HEAT_REFERENCE, system);
  return `Label leftovers with their heat so far, in minutes at ${reference} of ${budget}: ${listText(used)}.`;
}

function proposalLines(plan: OrderPlan): readonly string[] {
  return plan.layers.flatMap((layer) =>
    layer.doses.flatMap((dose) => {
      const [first] = dose.proposals;
      return first === undefined ? [] : [`${layer.layer}, ${dose.material}: ${first}.`];
    }),
  );
}
