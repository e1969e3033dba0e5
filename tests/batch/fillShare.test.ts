import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillMark } from '../../shared/batch/fillMark.ts';
import { fillShare, type Profile, sharesFromMarks } from '../../shared/batch/fillShare.ts';

const PROFILES: readonly Profile[] = ['box', 'V', 'half-round', 'ellipse'];

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
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        fc.double({ min: 0.001, max: 0.01, noNaN: true }),
        (mark, step) => {
          expect(fillShare(profile, mark + step)).toBeGreaterThan(fillShare(profile, mark));
          expect(fillMark(profile, fillShare(profile, mark))).toBeNear(mark, { absolute: 1e-6 });
        },
      ),
    );
  });

  test('refuses a mark past the top', () => {
    expect(() => fillShare('box', 1.2)).toThrow('fill mark: at most');
  });
});

describe('sharesFromMarks', () => {
  test('adds up to 1 and orders like the marks', () => {
    const shares = sharesFromMarks('half-round', [0.3, 0.55, 1]);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeNear(1, { absolute: 1e-12 });
    expect(shares[0]).toBeNear(fillShare('half-round', 0.3), { absolute: 1e-12 });
  });

  test('refuses marks that do not rise or do not reach the top', () => {
    expect(() => sharesFromMarks('box', [0.5, 0.4, 1])).toThrow(
      'fill mark of layer 2: greater than',
    );
    expect(() => sharesFromMarks('box', [0.5, 0.9])).toThrow('last fill mark: form');
  });
});
