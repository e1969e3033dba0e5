/** Which way the warmer side of a horizontal face looks; a face colder than the room and looking up counts as `hot down`. */
export type HorizontalFace = 'hot up' | 'hot down';

/** Where the boundary layer over a horizontal face turns turbulent. */
const TURBULENT_HORIZONTAL = 1e7;
/** Up to here the laminar fit of a vertical face is the better one. */
const LAMINAR_VERTICAL = 1e9;

/**
 * Free convection from a horizontal face, length = area over perimeter.
 *
 * Hot up: Nu = 0.54 Ra^(1/4), above Ra 1e7 0.15 Ra^(1/3); hot down: Nu = 0.27 Ra^(1/4).
 * Fitted for Ra 1e4 to 1e11 (down 1e5 to 1e10); below that it falls short of what is lost, which is little there.
 *
 * @param rayleigh - >= 0
 * @returns h L / k, pure number
 * @source INCROPERA, equations 9.30 to 9.32, after MCADAMS
 */
export function horizontalNusselt(rayleigh: number, face: HorizontalFace): number {
  if (face === 'hot down') return 0.27 * rayleigh ** 0.25;
  return rayleigh > TURBULENT_HORIZONTAL ? 0.15 * Math.cbrt(rayleigh) : 0.54 * rayleigh ** 0.25;
}

/**
 * Free convection from a vertical face: the laminar fit up to Ra 1e9, the overall one beyond.
 *
 * Nu = 0.68 + 0.670 Ra^(1/4) / [1 + (0.492 / Pr)^(9/16)]^(4/9)
 *
 * @param rayleigh - on the height, >= 0
 * @returns h H / k, pure number
 * @source CHURCHILLCHU, in INCROPERA equation 9.27
 */
export function verticalNusselt(rayleigh: number, prandtl: number): number {
  if (rayleigh > LAMINAR_VERTICAL) return verticalNusseltOverall(rayleigh, prandtl);
  return 0.68 + (0.67 * rayleigh ** 0.25) / prandtlTerm(prandtl) ** (4 / 9);
}

/**
 * Free convection from a vertical face over all Ra: Nu = {0.825 + 0.387 Ra^(1/6) / [1 + (0.492 / Pr)^(9/16)]^(8/27)}^2.
 * @param rayleigh - on the height, >= 0
 * @returns h H / k, pure number
 * @source CHURCHILLCHU, in INCROPERA equation 9.26
 */
export function verticalNusseltOverall(rayleigh: number, prandtl: number): number {
  return (0.825 + (0.387 * rayleigh ** (1 / 6)) / prandtlTerm(prandtl) ** (8 / 27)) ** 2;
}

function prandtlTerm(prandtl: number): number {
  return 1 + (0.492 / prandtl) ** (9 / 16);
}
