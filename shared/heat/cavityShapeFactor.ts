import type { CavityProfile } from '../batch/fillShare.ts';
import { requireNumber } from '../errors/requireNumber.ts';

/** Most that two walls at right angles add over a slab, at aspect 1. */
const BOX = 0.56;
/** The same for round sections; a round bar's own series gives 0.41. */
const ROUND = 0.43;
/** A V has no aspect to it: flat or steep, it is a wedge that sets from its edges to its thickest place. */
const WEDGE = 0.55;

/**
 * How much later a cavity sets than a slab of its volume over wetted metal area.
 *
 * F = 1 + 0.56 s for a box, 1 + 0.43 s for half-round and ellipse, s = 2 r / (1 + r^2), r the aspect; 1.55 for a V.
 * The slowest term of a box alone gives F = 1 + s: its walls' rates add up, pi^2 (1 / w^2 + 1 / (2 h)^2), while
 * M = w h / (w + 2 h). The mean falls faster than that term at first, so less than all of s counts; 0.56 and 0.43 are
 * fitted to two-dimensional solutions at a mold of 60 °C. A wide or deep slot tends to a slab: 1.11 at 20 times as wide as
 * deep, 1.26 at 8 times, 1.45 at 4 times, 1.54 at 1.5 times.
 *
 * Within 10 % of those solutions for molds of 49 to 71 °C: high in a cool mold, low in a hot one.
 *
 * @param aspect - r > 0: twice the height of the fill over the width of its surface in an open cavity, which loses heat to
 *   metal below only; depth over width in a closed one, where metal is on all sides
 * @returns factor on a slab's times, 1 to 1.56
 * @throws InputError on an aspect out of range
 * @source HEATSTUDY; INCROPERA, section 5.8
 */
export function cavityShapeFactor(profile: CavityProfile, aspect: number): number {
  requireNumber(aspect, 'aspect of the cavity', { greaterThan: 0 });
  if (profile === 'V') return 1 + WEDGE;
  // Written so that neither a tiny nor a huge aspect overflows.
  const corner = 2 / (aspect + 1 / aspect);
  return 1 + (profile === 'box' ? BOX : ROUND) * corner;
}
