import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillMark } from '../../shared/batch/fillMark.ts';
import { type CavityProfile, fillShare, sharesFromMarks } from '../../shared/batch/fillShare.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

const PROFILES: readonly CavityProfile[] = ['box', 'V', 'half-round', 'ellipse'];

describe('fillShare', () => {
  test.each([
    { given: ['box', 0.3], expected: 0.3, source: 'proportion' },
    { given: ['V', 0.5], expected: 0.25, source: 'similar triangles' },
    { given: ['ellipse', 0.5], expected: 0.5, source: 'symmetry' },
    // quarter-height circular segment: 0.195501 of the disc
    {
      given: ['ellipse', 0.25],
      expected: 0.1955011,
      source: 'CRC, circular segment h/D 0.25, A/D² 0.15354621 over π/4',
    },
    {
      given: ['half-round', 0.5],
      expected: 0.3910022,
      source: 'CRC, the same segment over half the disc',
    },
  ] as const)('$given is $expected', ({ given: [profile, mark], expected }) => {
    // the table prints eight places
    expect(fillShare(profile, mark)).toBeNear(expected, { absolute: 5e-7 });
  });

  test.each(PROFILES)('%s: empty is 0, full is 1, it rises, and fillMark undoes it', (profile) => {
    expect(fillShare(profile, 0)).toBeNear(0, { absolute: 1e-15 });
    expect(fillShare(profile, 1)).toBeNear(1, { absolute: 1e-15 });
    fc.assert(
      fc.property(
        evenReal(0, 0.99),
        fc.double({ min: 0.001, max: 0.01, noNaN: true }),
        (mark, step) => {
          expect(fillShare(profile, mark + step)).toBeGreaterThan(fillShare(profile, mark));
          expect(fillMark(profile, fillShare(profile, mark))).toBeNear(mark, { absolute: 1e-6 });
        },
      ),
    );
  });

  test('refuses a mark past the top', () => {
    expect(errorText(() => fillShare('box', 1.2))).toBe('fill mark must be at most 1, got 1.2');
  });
});

describe('sharesFromMarks', () => {
  test('adds up to 1 and orders like the marks', () => {
    const shares = sharesFromMarks('half-round', [0.3, 0.55, 1]);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeNear(1, { absolute: 1e-12 });
    expect(shares[0]).toBeNear(fillShare('half-round', 0.3), { absolute: 1e-12 });
  });

  test('refuses marks that do not rise or do not reach the top', () => {
    expect(errorText(() => sharesFromMarks('box', [0.5, 0.4, 1]))).toBe(
      'fill mark of layer 2 must be greater than the mark before it (0.5), got 0.4',
    );
    expect(errorText(() => sharesFromMarks('box', [0.5, 0.9]))).toBe(
      'last fill mark must be 1, the top of the cavity, got 0.9',
    );
    expect(errorText(() => sharesFromMarks('box', []))).toBe(
      'last fill mark must be 1, the top of the cavity, got nothing',
    );
  });
});

describe('the lowest film of a round cavity', () => {
  test.each([
    { profile: 'ellipse', factor: 16 / (3 * Math.PI) },
    { profile: 'half-round', factor: (8 * Math.SQRT2) / (3 * Math.PI) },
  ] as const)('$profile rises like a parabola’s segment', ({ profile, factor }) => {
    // segment of height e under a parabola of the same curvature: area 2/3 chord e; next term 0.3 e
    for (const mark of [1e-4, 1e-6, 1e-8])
      expect(fillShare(profile, mark)).toBeNear(factor * mark ** 1.5, { relative: mark + 1e-9 });
  });

  test('an ellipse is the same from above and below', () => {
    fc.assert(
      fc.property(evenReal(0, 1), (mark) => {
        // last digits of a double
        expect(fillShare('ellipse', mark) + fillShare('ellipse', 1 - mark)).toBeNear(1, {
          absolute: 1e-14,
        });
      }),
    );
  });

  test('fillMark undoes fillShare down to the thinnest film', () => {
    // 52 halvings of the cavity's depth
    for (const share of [1e-9, 1e-6, 0.001, 0.5, 0.999, 1])
      expect(fillShare('ellipse', fillMark('ellipse', share))).toBeNear(share, { relative: 1e-6 });
    expect(fillMark('V', 0)).toBe(0);
    expect(errorText(() => fillMark('V', -0.1))).toBe('share must be at least 0, got -0.1');
  });
});
