import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseClock } from '../../../shared/book/reading/parseClock.ts';
import { sentence } from '../../../shared/words/sentence.ts';
import { clockField } from '../../../sidebar/page/clockField.ts';

test('clockField writes what the workbook reads back as the same minute', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1439 }), (minutes) => {
      expect(clockField(minutes)).toMatch(/^\d\d:\d\d$/);
      expect(parseClock(clockField(minutes), 'first pour')).toBe(minutes);
    }),
  );
});

test('clockField is blank without a time', () => {
  expect(clockField(undefined)).toBe('');
});

test('sentence starts with a capital and ends with one stop', () => {
  expect(sentence('who must be given, got nothing')).toBe('Who must be given, got nothing.');
  expect(sentence('Select a row.')).toBe('Select a row.');
});
