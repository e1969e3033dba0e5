import type { UnitSystem } from '../../units/measures.ts';
import { durationText, shareText, temperatureText } from '../../words/quantityText.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { OrderPlan, Warning } from '../planTypes.ts';

/** A heat-up longer than this is better shortened than waited for [s]. */
const LONG_HEAT_UP = 3600;

/** Plate, fit and contact of a run. */
export function heatWarnings(
  facts: OrderFacts,
  plate: OrderPlan['plate'],
  system: UnitSystem,
): readonly Warning[] {
  const texts = [
    ...plateTexts(facts, plate, system),
    ...fitTexts(facts),
    ...(facts.plate.contactConductance === undefined
      ? [
          `The contact conductance of ${facts.plate.name} is not measured, so the heat-up may take half or twice as long: go by the mold top, and log a heat trial.`,
        ]
      : []),
  ];
  return texts.map((text) => ({ about: 'heat', text }));
}

function plateTexts(
  facts: OrderFacts,
  plate: OrderPlan['plate'],
  system: UnitSystem,
): readonly string[] {
  if (plate.kind === 'unreachable') return [`The mold will not get hot enough: ${plate.because}.`];
  const { heatUp, lidOff, topTarget } = plate;
  const texts: string[] = [];
  const cure = facts.plate.lid === 'lid' ? '' : 'a lid over it or ';
  if (heatUp > LONG_HEAT_UP)
    texts.push(
      `The mold takes ${durationText(heatUp)} to get hot: ${cure}a flatter contact with the plate shortens that.`,
    );
  if (lidOff !== undefined && lidOff < topTarget)
    texts.push(
      `Without its lid the mold top falls back to ${temperatureText(lidOff, system, 'down')}, below the ${temperatureText(topTarget, system, 'up')} that it must read: lift the lid only to pour, or use a hotter plate.`,
    );
  return texts;
}

function fitTexts({ mold, moldsInUse, plate }: OrderFacts): readonly string[] {
  const { usableLength, usableWidth } = plate;
  if (usableLength === undefined || usableWidth === undefined)
    return [
      `The usable length and width of ${plate.name} are not in Plates, so whether the molds fit was not checked.`,
    ];
  const set = moldsInUse === 1 ? mold.name : `${moldsInUse} × ${mold.name}`;
  const stands = isInside(mold, { length: usableLength, width: usableWidth });
  const covered = (moldsInUse * mold.blockLength * mold.blockWidth) / (usableLength * usableWidth);
  if (stands && covered <= 1) return [];
  const why = stands
    ? `it covers ${shareText(covered)} of the evenly hot part`
    : 'one mold is longer or wider than the evenly hot part';
  return [
    `${set} does not fit on ${plate.name}: ${why}. Use fewer molds at a time, or a larger plate.`,
  ];
}

/** Whether a block lies inside the evenly hot part, lengthwise or crosswise. */
function isInside(
  { blockLength, blockWidth }: OrderFacts['mold'],
  hot: { readonly length: number; readonly width: number },
): boolean {
  const lengthwise = blockLength <= hot.length && blockWidth <= hot.width;
  return lengthwise || (blockWidth <= hot.length && blockLength <= hot.width);
}
