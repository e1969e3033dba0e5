import { expect, test } from 'vitest';
import { isErrorCell } from '../../../shared/book/reading/isErrorCell.ts';

test.each(['#N/A', '#REF!', '#DIV/0!', '#VALUE!', '#NAME?', '#NUM!', '#ERROR!', ' #SPILL! '])(
  '%s is an error cell',
  (text) => {
    expect(isErrorCell(text)).toBe(true);
  },
);

test.each(['#3 short', '#', 'N/A', '', 0, true, '#N/A of the last run'])('%s is not', (value) => {
  expect(isErrorCell(value)).toBe(false);
});
