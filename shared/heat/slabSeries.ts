import { findRoot } from './findRoot.ts';

/** Heat exchange at the two faces of a slab, each over k / L: Bi = h L / k. */
export interface SlabFaces {
  /** At the wall, > 0 */
  readonly wallBiot: number;
  /** At the free surface, >= 0; 0 is an insulated surface or the middle of a slab cooled on both faces */
  readonly surfaceBiot: number;
}

/** One term of a slab's cooling: its shape, and how a start profile loads it. Depth 0 is the free surface, 1 the wall. */
export interface SlabMode {
  /** zeta: the term decays as exp(-zeta^2 Fo) */
  readonly eigenvalue: number;
  /** Amplitude for a start profile of 1 throughout */
  readonly uniform: number;
  /** Amplitude for a start profile equal to the depth */
  readonly linear: number;
  /** Mean of the term's shape over the depth */
  readonly mean: number;
}

/** Below any eigenvalue of a slab with Bi >= 1e-11; the condition itself vanishes at 0. */
const SMALLEST_EIGENVALUE = 1e-6;

/**
 * Leading terms of the cooling of a slab that exchanges heat on both faces, between constant surroundings.
 *
 * (zeta - Bs Bw / zeta) sin zeta = (Bs + Bw) cos zeta, one root in each ((n - 1) pi, n pi);
 * shape X(y) = cos(zeta y) + (Bs / zeta) sin(zeta y), so that X = 1 at the free surface.
 * With Bs = 0 this is the handbooks' plane wall: zeta tan zeta = Bi, C1 = 4 sin zeta / (2 zeta + sin 2 zeta).
 *
 * @param count - how many terms, at least 1; one is enough for Fo > 0.2, eight for Fo > 0.01
 * @source CARSLAW, section 3.11; INCROPERA, section 5.5 and Table 5.1
 */
export function slabSeries(
  { wallBiot, surfaceBiot }: SlabFaces,
  count: number,
): readonly SlabMode[] {
  const sum = wallBiot + surfaceBiot;
  const product = wallBiot * surfaceBiot;
  const condition = (zeta: number) =>
    (zeta ** 2 - product) * Math.sin(zeta) - sum * zeta * Math.cos(zeta);
  return Array.from({ length: count }, (_, index) => {
    const low = index === 0 ? SMALLEST_EIGENVALUE : index * Math.PI;
    return slabMode(findRoot(condition, low, (index + 1) * Math.PI), surfaceBiot);
  });
}

function slabMode(zeta: number, surfaceBiot: number): SlabMode {
  const b = surfaceBiot / zeta;
  const sine = Math.sin(zeta);
  const cosine = Math.cos(zeta);
  // Integrals of X, y X and X^2 over the depth.
  const mean = (sine + b * (1 - cosine)) / zeta;
  const moment = sine / zeta + (cosine - 1) / zeta ** 2 + b * (sine / zeta ** 2 - cosine / zeta);
  const wave = (sine * cosine) / (2 * zeta);
  const square = 0.5 + wave + b ** 2 * (0.5 - wave) + (b * sine ** 2) / zeta;
  return { eigenvalue: zeta, uniform: mean / square, linear: moment / square, mean };
}
