import type { OrderPlan } from '../../../plan/planTypes.ts';
import { temperatureText } from '../../../words/quantityText.ts';
import type { SheetSection } from '../runSheetTypes.ts';

/** The cautions of every run sheet. They print always and give way to the material's and the equipment's own papers. */
export function cautionsSection(plan: OrderPlan): SheetSection {
  return {
    name: 'cautions',
    heading: 'Cautions',
    blocks: [{ kind: 'lines', lines: cautionLines(plan) }],
  };
}

/** The same lines wherever heat is shown. */
export function cautionLines(plan: OrderPlan): readonly string[] {
  const stop = temperatureText(plan.hardStop, plan.system, 'down');
  return [
    'SDS, equipment manual, local codes come first. Leave wiring and vents to licensed trades.',
    'Extraction on before heat. Smoke, sharp smell, sting: heat off, leave, do not pour.',
    `No cup above ${stop}, nor above a material’s own maximum.`,
    'Hot plastisol sticks and burns: shield, dry gloves, sleeves, apron, closed shoes.',
    'No water near the melt; everything bone dry. Cups open, short bursts, face back.',
    'Fire: power off, smother, no water, get out, call. Never leave heat unattended.',
    'Burn: cool running water 20 min or more, leave the plastic on, get medical help.',
    'Nothing goes back to food. No eating, smoking, children or pets. Not a toy.',
    'All figures are estimates: check them on your own mold and material.',
  ];
}
