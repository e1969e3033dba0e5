import { expect, test } from 'vitest';
import { sheetOptions } from '../../../workbench/sheet/sheetOptions.ts';

test('takes an order and a file, and fills in the rest', () => {
  expect(sheetOptions(['--order', ' 1004 ', '--out', 'a.PDF'])).toEqual({
    order: '1004',
    out: 'a.PDF',
    kind: 'pdf',
    book: 'books/demo.xlsx',
    paper: 'Letter',
    pictures: false,
    quote: false,
  });
  expect(sheetOptions(['--order', '1', '--out', 'a.pdf', '--pictures']).pictures).toBe(true);
  expect(sheetOptions(['--order', '1', '--out', 'a.pdf', '--quote']).quote).toBe(true);
});

test.each([
  { args: ['--out', 'a.pdf'], sentence: 'order must be given, got nothing' },
  { args: ['--order', '1'], sentence: 'out must be a .pdf or .html file, got nothing' },
  {
    args: ['--order', '1', '--out', 'a.doc'],
    sentence: 'out must be a .pdf or .html file, got a.doc',
  },
  {
    args: ['--order', '1', '--out', 'a.pdf', '--paper', 'A5'],
    sentence: 'paper must be one of Letter, A4, got A5',
  },
  {
    args: ['--order', '1', '--out', 'a.pdf', '--quote', '--pictures'],
    sentence: 'pictures must be left out, got them with a quote',
  },
])('refuses $args in one sentence', ({ args, sentence }) => {
  expect(() => sheetOptions(args)).toThrow(sentence);
});
