import type { LayerBatch } from '../../batch/layerBatch.ts';
import { type WholeDropBatch, wholeDropBatch } from '../../batch/wholeDropBatch.ts';
import type { Shop } from '../../book/settings/settings.ts';
import { toEngine } from '../../units/toEngine.ts';
import {
  countText,
  deviationText,
  gramsText,
  listText,
  volumeText,
} from '../../words/quantityText.ts';
import type { SizedDose } from './sizedDose.ts';

/** A larger cup of a layer in which every counted dose comes out in whole drops. */
export interface FullerCup {
  /** The proposal as it stands beside one of the doses: its own count, and what the others then are. */
  readonly sayFor: (index: number) => string;
}

/**
 * The smallest such cup, where one is needed and still fits. Doses of a layer share the cup, so one that suits a single colorant
 * alone could spoil the others.
 * @returns undefined when every dose is whole as it is, or the cup would run over
 */
export function fullerCup(
  doses: readonly SizedDose[],
  cup: LayerBatch,
  shop: Shop,
): FullerCup | undefined {
  const counted = doses.filter(({ by }) => by === 'drops');
  const larger = largerCup(
    counted.map(({ drops }) => drops),
    cup,
    shop,
  );
  if (larger === undefined) return undefined;
  const { volume, whole } = larger;
  const amounts = doses.map((dose) => {
    const place = counted.indexOf(dose);
    if (place < 0) return gramsText((dose.mass * volume) / cup.cupVolume);
    return `${countText(whole.drops[place] ?? 0, 'drop')}${deviationText(whole.errors[place] ?? 0)}`;
  });
  const which = cup.cups === 1 ? 'the cup' : 'each cup';
  return {
    sayFor: (index) => {
      const others = doses
        .map(({ material }, place) => `${amounts[place]} of ${material}`)
        .filter((_, place) => place !== index);
      const along = others.length === 0 ? '' : `, with ${listText(others)}`;
      return `fill ${which} to ${volumeText(volume, shop.units)} cold and count ${amounts[index]}${along}`;
    },
  };
}

/** Looked for on the marks that a volume is told in: between two marks nobody can fill a cup. */
function largerCup(
  drops: readonly number[],
  { cupVolume, cupHotVolume }: LayerBatch,
  shop: Shop,
): { readonly volume: number; readonly whole: WholeDropBatch } | undefined {
  let { batch } = wholeDropBatch(drops, shop.doseTolerance);
  if (batch === 1) return undefined;
  const mark = shop.units === 'US' ? toEngine(0.1, 'floz') : toEngine(1, 'mL');
  let marks = Math.round(cupVolume / mark);
  for (;;) {
    marks = Math.max(marks + 1, Math.ceil((cupVolume * batch) / mark));
    const share = (marks * mark) / cupVolume;
    if (cupHotVolume * share > shop.cupFill) return undefined;
    const whole = wholeDropBatch(
      drops.map((one) => one * share),
      shop.doseTolerance,
    );
    if (whole.batch === 1) return { volume: marks * mark, whole };
    batch = share * whole.batch;
  }
}
