import { nearestSpoon } from '../batch/nearestSpoon.ts';
import type { DoseUnit, ScaledDose } from '../batch/scaledDose.ts';
import { spoonText } from '../batch/spoonText.ts';
import { wholeDrops } from '../batch/wholeDrops.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { formatFixed, formatPlain } from '../units/formatPlain.ts';

/** How to measure a dose at the bench: whole drops or what would make them whole, else the scale and the nearest spoon. */
export function doseText(
  unit: DoseUnit,
  dose: ScaledDose,
  spoonDensity: number,
  tolerance: number,
): string {
  if (unit === 'drop') return dropWords(dose.drops, tolerance);
  if (unit === 'mL') return 'weigh, or use a syringe';
  const spoon = nearestSpoon(dose.mass, spoonDensity);
  return `weigh, or ${spoonText(spoon)} level${errorWords(spoon.error)}`;
}

function dropWords(drops: number, tolerance: number): string {
  const whole = wholeDrops({ drops, tolerance, leastDrops: DEFAULTS.leastDrops.value });
  if (whole.kind === 'drops') return `${count(whole.drops)}${errorWords(whole.error)}`;
  const batch = formatPlain(Number(whole.batch.toPrecision(3)));
  return `not whole drops: make ${batch} cups’ worth with ${count(whole.batchDrops)}, or cut 1 part in ${whole.cut} and use ${count(whole.cutDrops)}${errorWords(whole.cutError)}, or weigh`;
}

function count(drops: number): string {
  return drops === 1 ? '1 drop' : `${drops} drops`;
}

function errorWords(error: number): string {
  const percent = formatFixed(error * 100, 0);
  return percent === '0' ? '' : ` (${error > 0 ? '+' : ''}${percent} %)`;
}
