import { formatClock } from '../../book/clock.ts';
import { type SheetBlock, type SheetCell, type SheetSection, text } from '../documentTypes.ts';
import type { LayerPlan, OrderPlan } from '../plan.ts';
import { sayCount, sayDuration, sayShare, sayTemperature } from '../say.ts';

/** The layers in the order they are poured: mark, cup temperature and window. */
export function layersSection(plan: OrderPlan): SheetSection {
  const { perRound, toPour, rounds } = plan.pieces;
  const counts = `${sayCount(toPour, 'piece')} in ${sayCount(rounds, 'round')} of ${perRound}`;
  const table: SheetBlock = {
    kind: 'table',
    headings: ['Layer', 'Fill to', 'Cup at', 'Not before', 'Not after'],
    widths: [26, 17, 20, 28, 28],
    rows: plan.layers.map((layer) => plannedCells(layer, plan)),
  };
  return {
    name: 'layers',
    heading: `Layers: ${counts}`,
    blocks: [table, { kind: 'lines', lines: [paceLine(plan)] }],
  };
}

function plannedCells(layer: LayerPlan, plan: OrderPlan): readonly SheetCell[] {
  return [
    text(`${layer.order} ${layer.layer}`, 'strong'),
    text(sayShare(layer.fillMark), 'strong'),
    text(sayTemperature(layer.pourTemperature, plan.system), 'strong'),
    text(earliestText(layer, plan), 'strong'),
    text(latestText(layer), 'strong'),
  ];
}

function earliestText({ window }: LayerPlan, plan: OrderPlan): string {
  if (window === undefined)
    return plan.firstPour === undefined ? 'mold hot' : formatClock(plan.firstPour, plan.system);
  return window.kind === 'none' ? '–' : sayDuration(window.earliest, 'up');
}

function latestText({ window }: LayerPlan): string {
  if (window === undefined) return '–';
  if (window.kind === 'none') return 'will not bond';
  return window.kind === 'from' ? 'any time' : sayDuration(window.latest, 'down');
}

function paceLine(plan: OrderPlan): string {
  const each = 'Times run from the pour of the layer below, same cavity, mold kept hot.';
  const cup = `A cup pours ${sayCount(plan.cavitiesPerCup, 'cavity', 'cavities')} or ${sayDuration(plan.cupTime, 'down')}, then back to heat; a layer takes ${sayDuration(plan.layerTime)}.`;
  const demold = `Plate off at the last top-off; demold below ${sayTemperature(plan.demoldTemperature, plan.system)}, about ${sayDuration(plan.coolTime)}.`;
  return `${each} ${cup} ${demold}`;
}
