import type { Shop } from '../book/settings.ts';
import { type BondWindow, bondWindow } from '../heat/bondWindow.ts';
import { cavityShapeFactor } from '../heat/cavityShapeFactor.ts';
import type { LayerInMold } from '../heat/layerInMold.ts';
import { openTime } from '../heat/openTime.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { closedThickness, effectiveThickness } from './effectiveThickness.ts';
import type { MoldFacts } from './findMold.ts';
import type { LayerFacts } from './findPattern.ts';
import type { LayerFill } from './layerShares.ts';
import { openAspect } from './openAspect.ts';
import type { LayerPlan, LayerWindow } from './plan.ts';
import { sayDuration, sayTemperature } from './say.ts';

export type LayerTimes = Pick<LayerPlan, 'openTime' | 'window'>;

/**
 * Open time and pour window of every layer, the mold held at the temperature of the first pour.
 *
 * A mold on the plate goes on climbing, so layers stay open and bond longer than this says; a draft does the opposite.
 * Each stack up to a fill mark is taken as one layer of its effective thickness and shape at the pour temperature of its top
 * layer. In a two-piece mold metal is all around and no surface is free; filled upright, every stack is its whole section. There
 * the innermost plastic, the last to cool, stands for the surface: both ends of the window err late.
 * @param top - mold temperature at the first pour [degC]
 */
export function planWindows(
  mold: MoldFacts,
  layers: readonly LayerFacts[],
  fills: readonly LayerFill[],
  shop: Shop,
  top: number,
): readonly LayerTimes[] {
  const stacks = layers.map((layer, index) => stackIn(mold, layer, fills[index]?.mark ?? 1, top));
  return layers.map((layer, index) => {
    const stack = stacks[index];
    const below = stacks[index - 1];
    const times = { openTime: stack ? openTimeOf(stack, shop) : { kind: 'stays open' as const } };
    return below ? { ...times, window: windowOn(below, layer, shop) } : times;
  });
}

function stackIn(mold: MoldFacts, layer: LayerFacts, mark: number, top: number): LayerInMold {
  const section = { profile: mold.profile, width: mold.cavityWidth, depth: mold.cavityDepth };
  const heat = {
    startTemperature: layer.pourTemperature - DEFAULTS.pourLoss.value,
    moldTemperature: top,
  };
  if (mold.kind === 'two-piece')
    return {
      ...heat,
      thickness: closedThickness(section),
      shapeFactor: cavityShapeFactor(section.profile, section.depth / section.width),
      surfaceCoefficient: 0,
    };
  return {
    ...heat,
    thickness: effectiveThickness(section, mark),
    shapeFactor: cavityShapeFactor(section.profile, openAspect(section, mark)),
  };
}

/** A cup that is no hotter than the mold cools into nothing: the layer is as open as the mold is hot. */
function isHotter(stack: LayerInMold): boolean {
  return stack.startTemperature > stack.moldTemperature;
}

function openTimeOf(stack: LayerInMold, shop: Shop): LayerPlan['openTime'] {
  if (!isHotter(stack))
    return stack.moldTemperature >= shop.setTemperature
      ? { kind: 'stays open' }
      : { kind: 'seconds', seconds: 0 };
  const open = openTime(stack, shop.setTemperature);
  if (open.kind === 'stays open') return { kind: 'stays open' };
  return { kind: 'seconds', seconds: open.kind === 'seconds' ? open.seconds : 0 };
}

function windowOn(below: LayerInMold, layer: LayerFacts, shop: Shop): LayerWindow {
  if (!isHotter(below))
    return {
      kind: 'none',
      because: `the layer below is poured no hotter than the mold, ${sayTemperature(below.moldTemperature, shop.units)}`,
    };
  const window = bondWindow(below, {
    pourTemperature: layer.pourTemperature - DEFAULTS.pourLoss.value,
    bondTemperature: shop.bondTemperature,
    firmTemperature: shop.firmTemperature,
  });
  return wordsOf(window, shop);
}

function wordsOf({ earliest, latest, verdict, ...rest }: BondWindow, shop: Shop): LayerWindow {
  const start = earliest.kind === 'seconds' ? earliest.seconds : 0;
  if (verdict === 'never firm')
    return {
      kind: 'none',
      because: `its surface settles at ${sayTemperature(rest.settledSurface, shop.units)}, above the ${sayTemperature(shop.firmTemperature, shop.units)} at which it carries the next layer`,
    };
  if (verdict === 'too late from the start')
    return {
      kind: 'none',
      because: `even fresh, its surface is below the ${sayTemperature(rest.surfaceNeeded, shop.units)} that the next pour needs to bond`,
    };
  if (latest.kind !== 'seconds') return { kind: 'from', earliest: start };
  if (verdict === 'open') return { kind: 'between', earliest: start, latest: latest.seconds };
  return {
    kind: 'none',
    because: `it stops bonding after ${sayDuration(latest.seconds, 'down')}, before it is firm at ${sayDuration(start, 'up')}`,
  };
}
