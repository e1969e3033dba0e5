import { temperatureText } from '../words/quantityText.ts';
import type { OrderPlan } from './planTypes.ts';

/** A moment to stop and check, with its items. */
export interface PausePoint {
  readonly name: 'Before heat' | 'Before the first pour' | 'Between layers' | 'Before packing';
  readonly items: readonly string[];
}

/** What the items say of a run. */
export type PausedRun = Pick<OrderPlan, 'system' | 'cookTemperature' | 'lowestPour' | 'plate'>;

/** Four pauses, five to nine short items each: the first three are read and done, the last confirms what was done. */
export function pausePoints(plan: PausedRun): readonly PausePoint[] {
  const { system } = plan;
  const cooked = temperatureText(plan.cookTemperature, system, 'up');
  const lowest = temperatureText(plan.lowestPour, system, 'up');
  const top =
    plan.plate.kind === 'unreachable'
      ? 'Every mold top at its target'
      : `Every mold top reads ${temperatureText(plan.plate.topTarget, system, 'up')}`;
  return [
    {
      name: 'Before heat',
      items: [
        'Extraction running',
        'Shield, dry gloves, sleeves, apron on',
        'Molds, cups, tools, powders bone dry',
        'Every cup weighed, lots written down',
        'Extinguisher and cool water in reach',
      ],
    },
    {
      name: 'Before the first pour',
      items: [
        top,
        `Cup cooked to ${cooked}, no milky part`,
        'Bottom of the cup stirred up',
        'No smoke, no sharp smell',
        'Timer ready, latest times read',
      ],
    },
    {
      name: 'Between layers',
      items: [
        'Skin is firm, window still open',
        `Cup ${lowest} or hotter, stirred`,
        'Poured low and slow, to its mark',
        'No cavity skipped or left short',
        'Time, temperature noted',
      ],
    },
    {
      name: 'Before packing',
      items: [
        'Pieces cold, cooled flat',
        'One piece a round torn across layers',
        'Good and bad counted by defect',
        'One piece weighed',
        'Count, label and order number agree',
      ],
    },
  ];
}
