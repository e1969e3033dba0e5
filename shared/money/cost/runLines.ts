import type { Shop } from '../../book/settings/settings.ts';
import type { OrderPlan } from '../../plan/planTypes.ts';
import { fromEngine } from '../../units/toEngine.ts';
import type { CostLine } from './costLine.ts';
import type { DraftLines } from './materialLines.ts';

/** Work of a run at the loaded rate, a line for each kind of work. */
export function laborLines(
  { work }: Pick<OrderPlan, 'work'>,
  { laborRate }: Pick<Shop, 'laborRate'>,
): readonly Omit<CostLine, 'minor'>[] {
  const kinds: readonly (readonly [string, number])[] = [
    ['Set-up and putting away', work.setUp],
    ['Weighing and coloring', work.coloring],
    ['Heating, attended', work.heating],
    ['Pouring', work.pouring],
    ['Demolding, inspecting, packing', work.finishing],
  ];
  return kinds.map(([label, seconds]) => hours('labor', label, seconds, laborRate));
}

/** Work on the colors of a pattern that is new. */
export function colorMatchLine({
  colorMatchTime,
  laborRate,
}: Pick<Shop, 'colorMatchTime' | 'laborRate'>): Omit<CostLine, 'minor'> {
  return hours('color match', 'Matching the colors of a new pattern', colorMatchTime, laborRate);
}

/** Electricity of plate and microwave, and the wear of the molds by the fillings they take. */
export function runLines(
  { energy, pieces, moldsInUse }: Pick<OrderPlan, 'energy' | 'pieces' | 'moldsInUse'>,
  { energyPrice, moldWear }: Pick<Shop, 'energyPrice' | 'moldWear'>,
): DraftLines {
  const electricity = (label: string, joules: number) =>
    ({
      key: 'energy',
      label,
      amount: fromEngine(joules, 'kWh'),
      unit: 'kWh',
      rate: energyPrice,
    }) as const;
  const { plate, oven } = energy;
  const fillings = pieces.rounds * moldsInUse;
  return {
    lines: [
      ...(plate === undefined ? [] : [electricity('Plate', plate)]),
      electricity('Microwave', oven),
      { key: 'wear', label: 'Mold wear', amount: fillings, unit: 'fillings', rate: moldWear },
    ],
    assumptions:
      plate === undefined
        ? ['The mold never gets hot enough as planned, so the plate’s electricity is left out.']
        : [],
  };
}

function hours(
  key: 'labor' | 'color match',
  label: string,
  seconds: number,
  rate: number,
): Omit<CostLine, 'minor'> {
  return { key, label, amount: fromEngine(seconds, 'h'), unit: 'h', rate };
}
