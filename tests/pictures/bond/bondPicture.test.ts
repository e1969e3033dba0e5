import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elementsToHtml } from '../../../shared/elements/elementsToHtml.ts';
import type { PlainElement } from '../../../shared/elements/plainElement.ts';
import { drawPicture } from '../../../shared/pictures/drawPicture.ts';
import { pictureText } from '../../../shared/pictures/pictureText.ts';
import type { BondPictured } from '../../../shared/trials/trialPictureTypes.ts';
import { evenReal } from '../../evenReal.ts';

const BOND: BondPictured = Object.freeze({
  kind: 'bond',
  title: 'Torn joints by contact temperature',
  system: 'metric',
  inUse: 116,
  joints: [
    { contactTemperature: 108, tear: 'peels clean' },
    { contactTemperature: 110, tear: 'peels clean' },
    { contactTemperature: 115, tear: 'tears in part' },
    { contactTemperature: 120, tear: 'tears through' },
    { contactTemperature: 124, tear: 'tears through' },
  ],
  curve: { intercept: -57.5, slope: 0.5 },
  threshold: { value: 115, low: 111, high: 119 },
} as const);

const temperature = fc.double({ min: 85, max: 150, noNaN: true });
const anyBond: fc.Arbitrary<BondPictured> = fc
  .record({
    system: fc.constantFrom('US', 'metric'),
    inUse: temperature,
    joints: fc.array(
      fc.record({
        contactTemperature: temperature,
        tear: fc.constantFrom('tears through', 'tears in part', 'peels clean'),
      }),
      { minLength: 1, maxLength: 40 },
    ),
    value: temperature,
    spans: fc.tuple(evenReal(0, 8), evenReal(0, 8)),
    slope: fc.double({ min: 0.01, max: 20, noNaN: true }),
    isFitted: fc.boolean(),
  })
  .map(({ system, inUse, joints, value, spans: [less, more], slope, isFitted }) => ({
    kind: 'bond',
    title: 'Torn joints',
    system,
    inUse,
    joints,
    ...(isFitted
      ? {
          curve: { intercept: -slope * value, slope },
          threshold: { value, low: value - less, high: value + more },
        }
      : {}),
  }));

function texts({ children }: PlainElement): readonly string[] {
  return children.flatMap((child) => (typeof child === 'string' ? [child] : texts(child)));
}

describe('the picture of a bond fit', () => {
  test('any joints give listed elements whose numbers are numbers, and words without NaN', () => {
    fc.assert(
      fc.property(anyBond, fc.constantFrom(300, 720), (bond, width) => {
        // Serializing refuses what is not on the lists: NaN, infinity and exponents too.
        expect(elementsToHtml(drawPicture(bond, width))).toMatch(/^<svg .*<\/svg>$/s);
        expect(pictureText(bond)).not.toMatch(/NaN|infinity|undefined/i);
      }),
      { numRuns: 100 },
    );
  });

  test('names its marks, the threshold and the figure in use, in gray alone', () => {
    const drawn = drawPicture(BOND, 720);
    for (const text of [
      'tears through',
      'tears in part',
      'peels clean',
      'half bond in here, nine times out of ten',
      'half bond at 115 °C',
      'in use 116 °C',
      'contact temperature, °C',
      'chance to bond, %',
    ])
      expect(texts(drawn)).toContain(text);
    const grays = elementsToHtml(drawn).match(/#[\da-f]{3,6}/g) ?? [];
    for (const gray of grays) expect(gray).toMatch(/^#(?:([\da-f])\1\1|([\da-f]{2})\2\2)$/);
  });

  test('without a fit it shows the joints and the figure in use, no curve', () => {
    const { curve: _, threshold: __, ...plain } = BOND;
    expect(texts(drawPicture(plain, 300)).join(' ')).not.toContain('half bond');
    expect(pictureText(plain)).toBe(
      'Torn joints by contact temperature: 5 joints. Of these 2 tears through, 120 °C to 124 °C, 1 tears in part, 115 °C to 115 °C and 2 peels clean, 108 °C to 110 °C. Bond temperature in use: 116 °C.',
    );
  });

  test('says the same in words', () => {
    expect(pictureText(BOND)).toContain(
      'Half bond at 115 °C, between 111 °C and 119 °C nine times out of ten.',
    );
  });
});
