import { formatClock } from '../../book/clock.ts';
import {
  type SheetBlock,
  type SheetCell,
  type SheetSection,
  text,
  write,
} from '../documentTypes.ts';
import type { LayerPlan, OrderPlan } from '../plan.ts';
import { sayCount, sayDuration, sayShare, sayTemperature } from '../say.ts';

/** Rounds side by side that still leave room to write. */
const ROUNDS_A_TABLE = 4;

/** The layers in the order they are poured: mark, window, and white space for what happened in each round. */
export function layersSection(plan: OrderPlan): SheetSection {
  const tables: SheetBlock[] = [];
  for (let first = 1; first <= plan.pieces.rounds; first += ROUNDS_A_TABLE)
    tables.push(
      timelineTable(plan, first, Math.min(plan.pieces.rounds, first + ROUNDS_A_TABLE - 1)),
    );
  const { perRound, toPour, rounds } = plan.pieces;
  const counts = `${sayCount(toPour, 'piece')} in ${sayCount(rounds, 'round')} of ${perRound}`;
  return {
    name: 'layers',
    heading: `Layers: ${counts}`,
    blocks: [...tables, { kind: 'lines', lines: [paceLine(plan)] }],
  };
}

function timelineTable(plan: OrderPlan, first: number, last: number): SheetBlock {
  const numbers = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const actual = numbers.flatMap(() => [write(plan.system === 'US' ? '°F' : '°C'), write('min')]);
  return {
    kind: 'table',
    headings: [
      'Layer',
      'Fill to',
      'Cup at',
      'Not before',
      'Not after',
      ...numbers.flatMap((round) => [`Round ${round}`, 'Gap']),
    ],
    widths: [16, 11, 13, 16, 15, ...numbers.flatMap(() => [10, 9])],
    rows: [
      topRow(plan, numbers),
      ...plan.layers.map((layer) => [...plannedCells(layer, plan), ...actual]),
    ],
  };
}

/** The mold top is read before every round; later rounds start on a mold that has been off the plate. */
function topRow(plan: OrderPlan, rounds: readonly number[]): readonly SheetCell[] {
  const target =
    plan.plate.kind === 'reachable'
      ? text(sayTemperature(plan.plate.topTarget, plan.system, 'up'), 'strong')
      : text('–');
  const readings = rounds.flatMap(() => [write(plan.system === 'US' ? '°F' : '°C'), text('')]);
  return [text('Mold top', 'strong'), text(''), target, text(''), text(''), ...readings];
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
