import {
  type SheetBlock,
  type SheetCell,
  type SheetSection,
  text,
  write,
} from '../documentTypes.ts';
import type { DosePlan, LayerPlan, OrderPlan } from '../plan.ts';
import { sayCount, sayDuration, sayGrams, sayTemperature, sayVolume } from '../say.ts';

/** More boxes than this no longer fit a row; the tally is written instead. */
const MOST_BOXES = 8;

/** What goes into each cup: one line for the base and for each dose, a box for each cup. */
export function cupsSection(plan: OrderPlan): SheetSection {
  const rows = plan.layers.flatMap((layer) => rowsOf(layer, plan));
  const table: SheetBlock = {
    kind: 'table',
    headings: ['Layer', 'Material', 'Lot', 'In each cup', 'Cups done', 'Actual'],
    widths: [15, 24, 11, 25, 15, 10],
    rows,
  };
  return {
    name: 'cups',
    heading: `${sayCount(plan.cups, 'cup')}, ${sayVolume(plan.plastisolVolume, plan.system)} of plastisol (${sayGrams(plan.plastisolMass)})`,
    blocks: [table, { kind: 'lines', lines: [cookingLine(plan), ...proposalLines(plan)] }],
  };
}

function rowsOf(layer: LayerPlan, plan: OrderPlan): readonly (readonly SheetCell[])[] {
  const base = [
    text(`${layer.order} ${layer.layer}`, 'strong'),
    text(layer.base),
    text(layer.lot, 'small'),
    text(`${sayGrams(layer.cupMass)} (${sayVolume(layer.cupVolume, plan.system)})`, 'strong'),
    ticks(layer.cups),
    write('g'),
  ];
  const doses = layer.doses.map((dose) => [
    text(''),
    text(dose.material),
    text(dose.lot, 'small'),
    text(doseText(dose), 'strong'),
    ticks(layer.cups),
    write(dose.measure.kind === 'drops' ? 'drops' : 'g'),
  ]);
  return [base, ...doses];
}

function ticks(count: number): SheetCell {
  return count > MOST_BOXES ? write(`of ${count}`) : { kind: 'boxes', count };
}

/** A dose as it is measured: whole drops, a spoon with its grams, or grams. */
export function doseText(dose: DosePlan): string {
  if (dose.measure.kind === 'drops') return sayCount(dose.measure.drops, 'drop');
  if (dose.measure.kind === 'powder')
    return `${sayGrams(dose.mass)} (${dose.measure.spoons} level)`;
  return sayGrams(dose.mass);
}

function cookingLine(plan: OrderPlan): string {
  const cooked = sayTemperature(plan.cookTemperature, plan.system);
  const cook = `Cook each cup to ${cooked} in short bursts, about ${sayDuration(plan.cookTime)} in all, stirring and reading between.`;
  const pours = `One cup pours ${sayCount(plan.cavitiesPerCup, 'cavity', 'cavities')} or ${sayDuration(plan.cupTime, 'down')}, then back to heat.`;
  return `${cook} ${pours}`;
}

function proposalLines(plan: OrderPlan): readonly string[] {
  return plan.layers.flatMap((layer) =>
    layer.doses.flatMap((dose) => {
      const [first] = dose.proposals;
      return first === undefined ? [] : [`${layer.layer}, ${dose.material}: ${first}.`];
    }),
  );
}
