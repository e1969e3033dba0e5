import type { ControlChart } from '../../outcomes/quality/controlChart.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';

/** How a chart writes its values: shares as per cent, weights in the shop's unit. */
export interface ChartUnit {
  readonly of: (value: number) => number;
  readonly title: string;
  readonly narrowest: number;
}

export function chartUnit({ kind, system, each }: ControlChart): ChartUnit {
  if (kind === 'share-chart')
    return { of: (value) => value * 100, title: `% bad of each ${each}`, narrowest: 10 };
  const unit = MEASURES.baseMass[system];
  return {
    of: (value) => fromEngine(value, unit),
    title: UNITS[unit].label,
    narrowest: 0.001,
  };
}
