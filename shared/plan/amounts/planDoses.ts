import type { LayerBatch } from '../../batch/layerBatch.ts';
import { nearestSpoon } from '../../batch/nearestSpoon.ts';
import { spoonText } from '../../batch/spoonText.ts';
import { wholeDrops } from '../../batch/wholeDrops.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { countText, deviationText, gramsText } from '../../words/quantityText.ts';
import type { DoseFacts } from '../facts/findDoses.ts';
import type { DosePlan } from '../planTypes.ts';
import { type FullerCup, fullerCup } from './fullerCup.ts';
import { type SizedDose, sizedDose } from './sizedDose.ts';

/** What goes into one cup of a layer, each dose in a measure the bench has. */
export function planDoses(
  doses: readonly DoseFacts[],
  cup: LayerBatch,
  shop: Shop,
): readonly DosePlan[] {
  const sized = doses.map((dose) => sizedDose(dose, cup.cupVolume));
  const fuller = fullerCup(sized, cup, shop);
  return sized.map((dose, index) => {
    const { material, lot, mass } = dose;
    const rest = dose.by === 'drops' ? inDrops(dose, index, fuller, shop) : inGrams(dose);
    return { material, lot, mass, ...rest };
  });
}

function inGrams({ by, mass, spoonDensity }: SizedDose): Pick<DosePlan, 'measure' | 'proposals'> {
  if (by === 'scale') return { measure: { kind: 'scale' }, proposals: [] };
  const spoon = nearestSpoon(mass, spoonDensity);
  const measure = { kind: 'powder', spoons: spoonText(spoon), error: spoon.error } as const;
  return { measure, proposals: [] };
}

/** Proposals in the order they are tried: a fuller cup, a cut of the colorant, the scale. */
function inDrops(
  { drops, mass }: SizedDose,
  index: number,
  fuller: FullerCup | undefined,
  shop: Shop,
): Pick<DosePlan, 'measure' | 'proposals'> {
  const leastDrops = DEFAULTS.leastDrops.value;
  const whole = wholeDrops({ drops, tolerance: shop.doseTolerance, leastDrops });
  if (whole.kind === 'drops') return { measure: whole, proposals: [] };
  const { cut, cutDrops, cutError } = whole;
  const proposals = [
    ...(fuller ? [fuller.sayFor(index)] : []),
    `cut the colorant, 1 part in ${cut}, and count ${countText(cutDrops, 'drop')}${deviationText(cutError)}`,
    `weigh ${gramsText(mass)}`,
  ];
  return { measure: { kind: 'scale' }, proposals };
}
