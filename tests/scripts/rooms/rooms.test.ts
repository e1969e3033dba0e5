import { describe, expect, test } from 'vitest';
import { brokenArrows } from '../../../scripts/rooms/brokenArrows.ts';
import {
  crowdedFolders,
  farHelpers,
  namesTwice,
  strangeNames,
} from '../../../scripts/rooms/crowdedFolders.ts';
import { importCircles } from '../../../scripts/rooms/importCircles.ts';
import { journey } from '../../../scripts/rooms/journey.ts';
import { ROOMS, type Room } from '../../../scripts/rooms/rooms.ts';
import { sourceTree } from '../../../scripts/rooms/sourceTree.ts';
import { withRoomsTable } from '../../../scripts/rooms/withRoomsTable.ts';

const LOW: Room = { room: 'shared/low', holds: 'low', imports: [] };
const HIGH: Room = { room: 'shared/high', holds: 'high', imports: ['shared/low'] };
const TREE = {
  'shared/low/a.ts': 'export const a = 1;',
  'shared/high/b.ts': "import { a } from '../low/a.ts';\nexport const b = a;",
};

describe('brokenArrows', () => {
  test('nothing is wrong with arrows that the rooms allow', () => {
    expect(brokenArrows(sourceTree(TREE), [LOW, HIGH])).toEqual([]);
  });

  test.each([
    {
      what: 'a value',
      text: "import { b } from '../high/b.ts';\nexport const a = b;",
    },
    { what: 'a type', text: "import type { b } from '../high/b.ts';\nexport const a = 1;" },
    { what: 'what is handed on', text: "export { b } from '../high/b.ts';" },
  ])('refuses $what of a room further down, with its line', ({ text }) => {
    expect(brokenArrows(sourceTree({ ...TREE, 'shared/low/a.ts': text }), [LOW, HIGH])).toEqual([
      'shared/low/a.ts:1: shared/low may not import shared/high',
    ]);
  });

  test('refuses an arrow that nobody uses, one that points down, and a room that is not listed', () => {
    const alone = sourceTree({ 'shared/low/a.ts': 'export const a = 1;' });
    expect(brokenArrows(alone, [LOW, HIGH])).toEqual([
      'shared/high imports nothing of shared/low: take it off its row',
    ]);
    expect(brokenArrows(sourceTree(TREE), [HIGH, LOW])).toEqual([
      'shared/high may not import shared/low, which stands below it',
    ]);
    expect(brokenArrows(sourceTree({ 'other/c.ts': 'export const c = 1;' }), [])).toEqual([
      'other/c.ts: other is not a room of scripts/rooms/rooms.ts',
    ]);
  });

  test('refuses Node where the platform or a browser runs the code', () => {
    const text = "\nimport { join } from 'node:path';\nexport const a = join;";
    expect(brokenArrows(sourceTree({ 'shared/low/a.ts': text }), [LOW])).toEqual([
      'shared/low/a.ts:2: shared/low may not import node:path',
    ]);
  });
});

test('importCircles finds files that import each other, by types too, and no others', () => {
  const circle = sourceTree({
    'shared/low/a.ts': "import type { B } from './b.ts';\nexport type A = B;",
    'shared/low/b.ts': "import type { C } from './c.ts';\nexport type B = C;",
    'shared/low/c.ts': "import type { A } from './a.ts';\nexport type C = A;",
    'shared/low/d.ts': "import type { A } from './a.ts';\nexport type D = A;",
  });
  expect(importCircles(circle)).toEqual([
    ['shared/low/a.ts', 'shared/low/b.ts', 'shared/low/c.ts'],
  ]);
  expect(importCircles(sourceTree(TREE))).toEqual([]);
});

test('crowdedFolders names a folder from its twenty-fifth file on', () => {
  const files = (count: number) => Array.from({ length: count }, (_, at) => `shared/low/${at}.ts`);
  expect(crowdedFolders(files(24))).toEqual([]);
  expect(crowdedFolders(files(25))).toEqual(['shared/low holds 25 files']);
});

test('namesTwice, strangeNames and farHelpers tell what makes a tree hard to enter', () => {
  const tree = sourceTree({
    'shared/low/a.ts': 'export const a = 1;\nexport const TWICE = 1;',
    'shared/low/odd.ts': "import { a } from './a.ts';\nexport const TWICE = a;",
    'shared/high/b.ts': "import { TWICE } from '../low/odd.ts';\nexport const b = TWICE;",
    'shared/high/someTypes.ts': 'export interface Some { readonly a: 1 }',
  });
  expect(namesTwice(tree)).toEqual(['TWICE is exported by shared/low/a.ts and shared/low/odd.ts']);
  expect(strangeNames(tree)).toEqual(['shared/low/odd.ts']);
  expect(farHelpers(tree)).toEqual(['shared/low/odd.ts']);
});

test('journey lists what is opened from a file, by room', () => {
  expect([...journey(sourceTree(TREE), ['shared/high/b.ts'])]).toEqual([
    ['shared/high', ['shared/high/b.ts']],
    ['shared/low', ['shared/low/a.ts']],
  ]);
});

test('withRoomsTable writes a row for each room between its marks, and keeps the rest', () => {
  const marks = ['<!-- rooms: written by npm run generate -->', '<!-- /rooms -->'];
  const text = withRoomsTable(`before\n${marks.join('\nstale row\n')}\nafter\n`);
  expect(text).toMatch(/^before\n/);
  expect(text).toMatch(/\nafter\n$/);
  expect(text).not.toContain('stale row');
  for (const { room } of ROOMS) expect(text).toContain(`| \`${room}\` |`);
  expect(withRoomsTable(text)).toBe(text);
  expect(() => withRoomsTable('no marks')).toThrow('DEVELOPERS.md lacks the mark');
});
