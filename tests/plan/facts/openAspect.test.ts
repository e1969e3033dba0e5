import { expect, test } from 'vitest';
import { openAspect } from '../../../shared/plan/facts/openAspect.ts';

test.each([
  // geometry by hand; a half circle of radius 5: at height 2 its chord is 2 sqrt(25 - 9) = 8
  { profile: 'box' as const, width: 8, depth: 4, mark: 0.5, expected: (2 * 2) / 8 },
  { profile: 'V' as const, width: 8, depth: 6, mark: 0.25, expected: (2 * 1.5) / 2 },
  { profile: 'half-round' as const, width: 10, depth: 5, mark: 0.4, expected: (2 * 2) / 8 },
  { profile: 'half-round' as const, width: 10, depth: 5, mark: 1, expected: 1 },
  { profile: 'ellipse' as const, width: 10, depth: 10, mark: 0.2, expected: (2 * 2) / 8 },
  { profile: 'ellipse' as const, width: 12, depth: 6, mark: 0.5, expected: (2 * 3) / 12 },
  { profile: 'ellipse' as const, width: 12, depth: 6, mark: 0.8, expected: 6 / 12 },
])('a $profile of $width x $depth filled to $mark', ({ expected, mark, ...section }) => {
  expect(openAspect(section, mark)).toBeNear(expected, { relative: 1e-12 }); // arithmetic only
});
