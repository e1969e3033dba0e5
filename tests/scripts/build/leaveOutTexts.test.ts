import { expect, test } from 'vitest';
import { withoutProperties } from '../../../scripts/build/leaveOutTexts.ts';

const KEYS = new Set(['about', 'notes']);

test.each([
  { code: 'f({ about: "x", a: 1 })', left: 'f({ a: 1 })' },
  { code: 'f({ a: 1, about: "x" })', left: 'f({ a: 1,  })' },
  {
    code: 'f({ a: { about: `x`, b: [ { notes: 2, c: 3 } ] } })',
    left: 'f({ a: { b: [ { c: 3 } ] } })',
  },
  { code: 'about({ notesToo: 1 }).about', left: 'about({ notesToo: 1 }).about' },
])('takes $code down to $left', ({ code, left }) => {
  expect(withoutProperties(code, KEYS)).toBe(left);
});
