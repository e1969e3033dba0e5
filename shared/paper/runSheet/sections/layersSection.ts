import { formatClock } from '../../../book/reading/parseClock.ts';
import type { LayerPlan, OrderPlan } from '../../../plan/planTypes.ts';
import type { Band, LayerBands } from '../../../plan/uncertainty/heatDetail.ts';
import { widestText } from '../../../plan/uncertainty/widestText.ts';
import {
  countText,
  durationText,
  shareText,
  stopwatchText,
  temperatureText,
} from '../../../words/quantityText.ts';
import { timeBandText } from '../../../words/timeBandText.ts';
import type { SheetBlock, SheetCell, SheetSection } from '../runSheetTypes.ts';
import { textCell } from '../textCell.ts';

/** The layers in the order they are poured: mark, cup temperature and window. */
export function layersSection(plan: OrderPlan): SheetSection {
  const { perRound, toPour, rounds } = plan.pieces;
  const counts = `${countText(toPour, 'piece')} in ${countText(rounds, 'round')} of ${perRound}`;
  const table: SheetBlock = {
    kind: 'table',
    headings: ['Layer', 'Fill to', 'Cup at', 'First cavity', 'Not before', 'Not after'],
    widths: [19, 15, 16, 21, 37, 28],
    rows: plan.layers.map((layer, index) => plannedCells(layer, plan, plan.detail?.layers[index])),
  };
  return {
    name: 'layers',
    heading: `Layers: ${counts}`,
    blocks: [table, { kind: 'lines', lines: [paceLine(plan), ...certaintyLines(plan)] }],
  };
}

function plannedCells(
  layer: LayerPlan,
  plan: OrderPlan,
  bands: LayerBands | undefined,
): readonly SheetCell[] {
  return [
    textCell(`${layer.order} ${layer.layer}`, 'strong'),
    textCell(shareText(layer.fillMark), 'strong'),
    textCell(temperatureText(layer.pourTemperature, plan.system), 'strong'),
    textCell(startText(layer, plan), 'strong'),
    sure(earliestText(layer), bands?.earliest),
    sure(latestText(layer), bands?.latest),
  ];
}

/** By the stopwatch that is started at the first pour of a round. */
function startText({ window, run }: LayerPlan, plan: OrderPlan): string {
  if (window !== undefined) return stopwatchText(run.firstAt);
  return plan.firstPour === undefined ? 'mold hot' : formatClock(plan.firstPour, plan.system);
}

function earliestText({ window }: LayerPlan): string {
  return window === undefined || window.kind === 'none' ? '–' : durationText(window.earliest, 'up');
}

function latestText({ window }: LayerPlan): string {
  if (window === undefined) return '–';
  if (window.kind === 'none') return window.why === 'stays soft' ? 'would mix in' : 'will not bond';
  return window.kind === 'from' ? 'any time' : durationText(window.latest, 'down');
}

/** A time with its band behind it, small. */
function sure(words: string, band: Band | undefined): SheetCell {
  const note = timeBandText(band);
  return { kind: 'text', text: words, size: 'strong', ...(note === '' ? {} : { note }) };
}

/** What the bands mean, and the trial that would narrow them most. */
function certaintyLines({ detail }: OrderPlan): readonly string[] {
  if (detail === undefined) return [];
  const widest = detail.layers.flatMap(({ earliest, latest }) =>
    [latest?.widest, earliest?.widest].flatMap((key) => (key === undefined ? [] : [key])),
  )[0];
  const why = widest === undefined ? '' : ` ${widestText(widest)}`;
  return [`Small: where nine of ten draws of what is not known exactly fall.${why}`];
}

function paceLine(plan: OrderPlan): string {
  const each =
    'First cavity: stopwatch from the first pour. Windows: from the pour below it, same cavity, mold kept hot.';
  const cup = `A cup pours ${countText(plan.cavitiesPerCup, 'cavity', 'cavities')} or ${durationText(plan.cupTime, 'down')}, then back to heat; a layer takes ${durationText(plan.layerTime)}.`;
  const demold = `Plate off at the last top-off; demold below ${temperatureText(plan.demoldTemperature, plan.system)}, about ${durationText(plan.coolTime)}.`;
  return `${each} ${cup} ${demold}`;
}
