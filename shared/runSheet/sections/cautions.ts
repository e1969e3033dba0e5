import type { SheetSection } from '../documentTypes.ts';
import type { OrderPlan } from '../plan.ts';
import { sayTemperature } from '../say.ts';

/** The cautions of every run sheet. They print always and give way to the material's and the equipment's own papers. */
export function cautionsSection(plan: OrderPlan): SheetSection {
  const stop = sayTemperature(plan.hardStop, plan.system, 'down');
  return {
    name: 'cautions',
    heading: 'Cautions',
    blocks: [
      {
        kind: 'lines',
        lines: [
          'SDS, equipment manuals and local codes come before this sheet. Wiring and ventilation are for licensed trades.',
          'Extraction to the outdoors on before any heat. Smoke, sharp smell or sting: heat off, leave, air out. Do not pour.',
          `No cup above ${stop}, nor above a material’s own maximum. No longer hot than planned.`,
          'Hot plastisol sticks and burns: face shield, dry gloves, sleeves, apron, closed shoes.',
          'No water near the melt: molds, cups, tools and powders bone dry. Cups open, short bursts, stir, face back.',
          'Fire: power off, smother or dry agent, no water, get out, call for help. Never leave heat unattended.',
          'Burn: cool running water 20 minutes or more, leave the plastic on, get medical help.',
          'Nothing here goes back to food. No eating, drinking, smoking; no children or pets. Not a toy.',
          'All figures are estimates: check them on your own mold and material.',
        ],
      },
    ],
  };
}
