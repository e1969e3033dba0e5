import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatClock, parseClock } from '../../../shared/book/reading/parseClock.ts';
import { describe as sentence } from '../../../shared/errors/describe.ts';
import { InputError } from '../../../shared/errors/InputError.ts';

function refusal(value: string | number | boolean): string {
  try {
    parseClock(value, 'first pour at');
  } catch (error) {
    if (error instanceof InputError) return sentence(error);
    throw error;
  }
  return 'accepted';
}

describe('parseClock', () => {
  // Midnight and noon in 12-hour writing: NIST, "Times of Day FAQs", takes 12 am for midnight as common use in the US.
  test.each([
    { given: '9:30', expected: 570 },
    { given: '09:30', expected: 570 },
    { given: ' 9:30 am ', expected: 570 },
    { given: '1:15 PM', expected: 795 },
    { given: '1:15 p.m.', expected: 795 },
    { given: '9 am', expected: 540 },
    { given: '12:00 am', expected: 0 },
    { given: '12:05 pm', expected: 725 },
    { given: '23:59', expected: 1439 },
    { given: '13:15:00', expected: 795 },
    { given: 0.5, expected: 720 },
    { given: 0.395833333333333, expected: 570 },
    { given: 0, expected: 0 },
  ])('parseClock reads $given as $expected minutes after midnight', ({ given, expected }) => {
    expect(parseClock(given, 'first pour at')).toBe(expected);
  });

  test.each(['24:00', '9', '9:60', '13 pm', '0:30 am', 'noon', '', '9:5', '-1:00'])(
    'parseClock refuses "%s" in one sentence',
    (given) => {
      expect(refusal(given)).toBe(
        `first pour at must be a time such as 9:30 or 1:15 pm, got ${given === '' ? 'nothing' : `"${given}"`}`,
      );
    },
  );

  test('parseClock refuses a number that is no fraction of a day', () => {
    expect(refusal(9)).toBe('first pour at must be a time such as 9:30 or 1:15 pm, got 9');
    expect(refusal(true)).toBe('first pour at must be a time such as 9:30 or 1:15 pm, got TRUE');
  });

  test('parseClock takes back what formatClock wrote, in both systems', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1439 }),
        fc.constantFrom('US' as const, 'metric' as const),
        (minutes, system) => {
          expect(parseClock(formatClock(minutes, system), 'first pour at')).toBe(minutes);
        },
      ),
    );
  });
});

describe('formatClock', () => {
  test.each([
    { given: 0, expected: '12:00 am' },
    { given: 725, expected: '12:05 pm' },
    { given: 1439.9, expected: '11:59 pm' },
    { given: -30, expected: '11:30 pm the day before' },
    { given: 1441, expected: '12:01 am the next day' },
  ])('formatClock writes $given as $expected', ({ given, expected }) => {
    expect(formatClock(given, 'US')).toBe(expected);
  });
});
