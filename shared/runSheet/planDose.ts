import type { LayerBatch } from '../batch/layerBatch.ts';
import { nearestSpoon } from '../batch/nearestSpoon.ts';
import { scaledDose } from '../batch/scaledDose.ts';
import { type WholeDrops, wholeDrops } from '../batch/wholeDrops.ts';
import type { Shop } from '../book/settings.ts';
import { DEFAULTS } from '../material/defaults.ts';
import type { DoseFacts } from './findDoses.ts';
import type { DosePlan } from './plan.ts';
import { sayCount, sayGrams, sayShare, sayVolume } from './say.ts';

/** Liquids given in mL are counted as drops up to this many; above, a scale is quicker and surer. */
const MOST_DROPS = 60;

const SPOONED: readonly string[] = ['powder', 'glitter', 'salt'];

/** What goes into one cup for one dose of the recipe, in a measure the bench has. */
export function planDose(dose: DoseFacts, cup: LayerBatch, shop: Shop): DosePlan {
  const { record } = dose.material;
  const spoonDensity = record.spoonDensity ?? DEFAULTS.spoonDensity.value;
  const { mass, drops } = scaledDose(
    {
      amount: dose.amount,
      unit: dose.unit,
      per: dose.per,
      dropVolume: record.dropVolume ?? DEFAULTS.dropVolume.value,
      density: record.density ?? DEFAULTS.colorantDensity.value,
      spoonDensity,
    },
    cup.cupVolume,
  );
  const named = { material: record.material ?? '', lot: record.lot ?? '', mass };
  const isSpooned = dose.unit === 'tsp' || SPOONED.includes(record.kind ?? '');
  if (dose.unit === 'drop' || (dose.unit === 'mL' && !isSpooned && drops <= MOST_DROPS))
    return { ...named, ...inDrops(drops, mass, cup, shop) };
  if (!isSpooned) return { ...named, measure: { kind: 'scale' }, proposals: [] };
  const spoon = nearestSpoon(mass, spoonDensity);
  const size = spoon.part === 1 ? '1 tsp' : `1/${spoon.part} tsp`;
  const spoons = spoon.scoops === 1 ? size : `${spoon.scoops} × ${size}`;
  return { ...named, measure: { kind: 'powder', spoons, error: spoon.error }, proposals: [] };
}

function inDrops(
  drops: number,
  mass: number,
  cup: LayerBatch,
  shop: Shop,
): Pick<DosePlan, 'measure' | 'proposals'> {
  const leastDrops = DEFAULTS.leastDrops.value;
  const whole = wholeDrops({ drops, tolerance: shop.doseTolerance, leastDrops });
  if (whole.kind === 'drops') return { measure: whole, proposals: [] };
  return { measure: { kind: 'scale' }, proposals: proposalsFor(whole, mass, cup, shop) };
}

/** In the order they are tried: a fuller cup, a cut of the colorant, the scale. */
function proposalsFor(
  whole: Extract<WholeDrops, { readonly kind: 'not whole' }>,
  mass: number,
  cup: LayerBatch,
  shop: Shop,
): readonly string[] {
  const fits = cup.cupHotVolume * whole.batch <= shop.cupFill;
  const fuller = sayVolume(cup.cupVolume * whole.batch, shop.units);
  const off = whole.cutError === 0 ? '' : ` (off by ${sayShare(Math.abs(whole.cutError))})`;
  return [
    ...(fits
      ? [`fill the cup to ${fuller} cold and count ${sayCount(whole.batchDrops, 'drop')}`]
      : []),
    `cut the colorant, 1 part in ${whole.cut}, and count ${sayCount(whole.cutDrops, 'drop')}${off}`,
    `weigh ${sayGrams(mass)}`,
  ];
}
