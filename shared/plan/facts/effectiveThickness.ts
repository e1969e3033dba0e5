import { type CavityProfile, PROFILES } from '../../batch/fillShare.ts';
import { requireChoice } from '../../errors/requireChoice.ts';
import { requireNumber } from '../../errors/requireNumber.ts';

export interface CavitySection {
  readonly profile: CavityProfile;
  /** Across the widest part [m], > 0. */
  readonly width: number;
  /** Deepest part [m], > 0. */
  readonly depth: number;
}

/** Intervals of the arc's Simpson sum; 64 leave less than one part in a million for sections up to 10 times as wide as deep. */
const INTERVALS = 64;

/**
 * Thickness of the slab that cools like the plastic below a fill mark of an open cavity: volume over wetted metal area.
 *
 * M = A / P for a prismatic cavity: cross-section A below the mark over its wetted perimeter P, bottom included, free surface not.
 * A wide box tends to its depth of fill; ends of the cavity are left out, so short cavities cool faster than this says.
 *
 * @param mark - height of the free surface as a share of the depth, 0 < mark <= 1
 * @returns effective thickness [m]
 * @throws InputError when a length or the mark is out of range
 */
export function effectiveThickness(section: CavitySection, mark: number): number {
  requireSection(section);
  requireNumber(mark, 'fill mark', { greaterThan: 0, atMost: 1 });
  const { profile, width, depth } = section;
  const height = mark * depth;
  if (profile === 'box') return (width * height) / (width + 2 * height);
  if (profile === 'V') {
    const halfWidth = (mark * width) / 2;
    return (halfWidth * height) / (2 * Math.hypot(halfWidth, height));
  }
  const upright = profile === 'ellipse' ? depth / 2 : depth;
  return segmentThickness(width / 2, upright, height);
}

/**
 * The same for a closed cavity filled upright, where metal is all around: the whole cross-section over its whole perimeter.
 *
 * An ellipse's perimeter by Ramanujan's second approximation: pi (a + b)(1 + 3 h / (10 + sqrt(4 - 3 h))), h = (a - b)^2 / (a + b)^2.
 * A plate-like cavity (width far above depth) tends to half its depth: it is cooled on both faces.
 *
 * @returns effective thickness [m]
 * @throws InputError when a length is out of range
 */
export function closedThickness(section: CavitySection): number {
  requireSection(section);
  const { profile, width, depth } = section;
  if (profile === 'box') return (width * depth) / (2 * (width + depth));
  if (profile === 'V') return (width * depth) / 2 / (width + 2 * Math.hypot(width / 2, depth));
  if (profile === 'ellipse')
    return (Math.PI * width * depth) / 4 / ellipsePerimeter(width / 2, depth / 2);
  return (Math.PI * width * depth) / 4 / (width + ellipsePerimeter(width / 2, depth) / 2);
}

/** Ramanujan's second approximation, for semi-axes [m]; better than 1 part in 1000 at any ratio. */
export function ellipsePerimeter(one: number, other: number): number {
  const h = ((one - other) / (one + other)) ** 2;
  return Math.PI * (one + other) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

/**
 * Segment of an ellipse (semi-axes `across`, `upright`) from its lowest point up to `height`, both halves.
 * With t the parametric angle from the lowest point: area = across upright (t - sin t cos t), arc by Simpson's rule.
 */
function segmentThickness(across: number, upright: number, height: number): number {
  const end = Math.acos(Math.max(-1, 1 - height / upright));
  const area = across * upright * (end - Math.sin(end) * Math.cos(end));
  const speed = (angle: number) => Math.hypot(across * Math.cos(angle), upright * Math.sin(angle));
  let sum = speed(0) + speed(end);
  for (let step = 1; step < INTERVALS; step++)
    sum += speed((step * end) / INTERVALS) * (step % 2 === 1 ? 4 : 2);
  return area / ((2 * sum * end) / (3 * INTERVALS));
}

function requireSection({ profile, width, depth }: CavitySection): void {
  requireChoice(profile, 'profile', PROFILES);
  requireNumber(width, 'cavity width', { greaterThan: 0, unit: 'm' });
  requireNumber(depth, 'cavity depth', { greaterThan: 0, unit: 'm' });
}
