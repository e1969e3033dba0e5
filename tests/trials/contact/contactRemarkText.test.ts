import { describe, expect, test } from 'vitest';
import {
  contactRemarkText,
  noContactText,
} from '../../../shared/trials/contact/contactRemarkText.ts';
import { figureAdviceText } from '../../../shared/trials/figureAdviceText.ts';

describe('contactRemarkText', () => {
  test.each([
    {
      remark: { kind: 'contact and loss told apart', correlation: 0.8 },
      words: 'the readings tell contact and heat loss apart',
    },
    {
      remark: {
        kind: 'contact not told from loss',
        readings: 2,
        correlation: undefined,
        add: { seconds: 2100, lossError: 0.1 },
      },
      words:
        '2 readings cannot tell contact from heat loss, which is taken as usual: add one after 35 min',
    },
    {
      remark: {
        kind: 'readings scatter more than the probe',
        residualDeviation: 5,
        readingError: 2,
      },
      words:
        'readings scatter by 9.0 °F: more than a probe does, so check times, setting and block',
    },
    {
      remark: { kind: 'contact poorly known', relativeError: 0.42 },
      words: 'contact known to ±42 % only: read more often while the mold climbs',
    },
  ] as const)('$words', ({ remark, words }) => {
    expect(contactRemarkText(remark, 'US')).toBe(words);
  });

  test('a scatter is a difference, in the system’s own degrees', () => {
    const remark = {
      kind: 'readings scatter more than the probe',
      residualDeviation: 5,
      readingError: 2,
    } as const;
    expect(contactRemarkText(remark, 'metric')).toContain('by 5.0 °C');
  });
});

test.each([
  ['fewer than two readings', 'give at least two readings'],
  [
    'tops hotter than any contact gives',
    'the mold is hotter than any contact makes it: check setting, block and minutes',
  ],
  [
    'tops colder than any contact gives',
    'the mold is colder than any contact leaves it: check setting, block and minutes, and that no infrared thermometer looked at bare metal',
  ],
  [
    'readings do not tell the contact',
    'these readings do not tell the contact: read while the mold climbs',
  ],
] as const)('%s: %s', (because, words) => {
  expect(noContactText(because)).toBe(words);
});

test.each([
  [{ value: 100, standardError: 2 }, 'good: known to ±2 %'],
  [{ value: 100, standardError: 0.4 }, 'good: known to ±0.4 %'],
  [{ value: 100, standardError: 20 }, 'known to ±20 % only: count more'],
])('%o is %s', (figure, words) => {
  expect(figureAdviceText(figure, 0.1, 'count more')).toBe(words);
});
