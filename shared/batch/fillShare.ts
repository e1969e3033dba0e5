import { InputError } from '../errors/InputError.ts';
import { requireNumber } from '../errors/requireNumber.ts';

/** Cross-section of a cavity: flat-bottomed, pointed, the lower half of an ellipse, a whole ellipse. */
export const PROFILES = ['box', 'V', 'half-round', 'ellipse'] as const;

export type CavityProfile = (typeof PROFILES)[number];

/**
 * Share of a cavity's cross-section that lies below a mark.
 * Box x; V x²; half-round 2/π [acos(1 - x) - (1 - x) √(2x - x²)]; ellipse 1/π [acos(1 - 2x) - (1 - 2x) 2 √(x - x²)].
 * Holds along a cavity of constant section; a tapering end makes the true share differ.
 * @param mark height of the surface over the cavity's depth, 0 to 1
 * @returns share of the area, 0 to 1
 * @throws InputError for a mark out of range
 * @source CRC, mensuration: circular segment, scaled along one axis
 */
export function fillShare(profile: CavityProfile, mark: number): number {
  requireNumber(mark, 'fill mark', { atLeast: 0, atMost: 1 });
  switch (profile) {
    case 'box':
      return mark;
    case 'V':
      return mark ** 2;
    case 'half-round':
      return 2 * segmentShare(mark / 2);
    case 'ellipse':
      return segmentShare(mark);
  }
}

/**
 * Share of a whole ellipse below x of its height: (2 angle - sin 2 angle) / 2π with cos angle = 1 - 2x. Both terms from
 * one angle: an area from a square root beside it would lose the lowest films in rounding.
 */
function segmentShare(x: number): number {
  const doubleAngle = 4 * Math.asin(Math.sqrt(x));
  return (doubleAngle - Math.sin(doubleAngle)) / (2 * Math.PI);
}

/**
 * Shares of the layers between rising marks; the last mark is the top of the cavity. A two-piece mold filled upright has
 * cumulative marks along its length: profile box, as far as it is equally thick there.
 * @param marks one per layer, rising, the last 1
 * @returns shares that add up to 1
 * @throws InputError when marks do not rise or do not end at 1
 */
export function sharesFromMarks(
  profile: CavityProfile,
  marks: readonly number[],
): readonly number[] {
  const below = marks.map((mark) => fillShare(profile, mark));
  marks.forEach((mark, index) => {
    const before = marks[index - 1] ?? 0;
    if (mark <= before)
      throw new InputError({
        field: `fill mark of layer ${index + 1}`,
        rule: { kind: 'greater than', limit: before, what: 'the mark before it' },
        value: mark,
      });
  });
  const last = marks[marks.length - 1];
  if (last !== 1)
    throw new InputError({
      field: 'last fill mark',
      rule: { kind: 'form', wanted: '1, the top of the cavity' },
      value: last,
    });
  return below.map((share, index) => share - (below[index - 1] ?? 0));
}
