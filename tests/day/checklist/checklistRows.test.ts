import { describe, expect, test } from 'vitest';
import { checklistRows } from '../../../shared/day/checklist/checklistRows.ts';
import { DAY_TABLE, FACTS, FRAME } from './dayData.ts';

const ROWS = checklistRows(DAY_TABLE, new Map([['2101', FACTS]]), FRAME);

function rowOf(id: string) {
  const found = ROWS.find((row) => row.id === id);
  if (!found) throw new Error(`no line ${id}`);
  return found;
}

describe('checklistRows', () => {
  test('has a line for every task, in the order of the plan, each id once', () => {
    const ids = ROWS.map(({ id }) => id);
    const tasks = ids.filter((id) => DAY_TABLE.entries.some((entry) => entry.id === id));
    expect(tasks).toEqual(DAY_TABLE.entries.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each([
    ['2101 lay out', '2101: lay out 2 × Ribbed 4 in, cups and tools, all dry'],
    ['2101 weigh and color', '2101: weigh and color 5 cups, Creek minnow v2'],
    [
      '2101 set on the plate, round 1',
      '2101 round 1: set 2 × Ribbed 4 in on Long griddle, dial at 270 °F, switch on',
    ],
    ['2101 heat, round 1', '2101 round 1: heat until every mold top reads 214 °F'],
    [
      '2101 cook belly, round 1',
      '2101 round 1: cook belly to 351 °F in Oven, stirred to the bottom',
    ],
    ['2101 pour back, round 2', '2101 round 2: pour back into every cavity, cup 302 °F or hotter'],
    ['2101 demold, round 1', '2101 round 1: demold below 109 °F'],
    ['2101 pack', '2101: pack and label'],
  ])('%s says %j', (id, text) => {
    expect(rowOf(id).text).toBe(text);
  });

  test('a layer may begin as long as its last cavity still bonds; packing ends by the due date', () => {
    const below = rowOf('2101 pour belly, round 1');
    // The last cavity waits 10 s beyond the start of the pass, its window ends at 400 s.
    expect(rowOf('2101 pour back, round 1').latest).toBe(below.from + 390);
    expect(below.latest).toBeUndefined();
    expect(rowOf('2101 pack').latest).toBe(41 * 3600);
  });

  test('pauses stand right before what waits for them: heat once a day, pours once a round, packing once', () => {
    const pauses = ROWS.flatMap(({ id, to }, place) =>
      to === undefined ? [`${id} | ${ROWS[place + 1]?.id}`] : [],
    );
    expect(pauses).toEqual([
      '2026-11-30 Before heat | 2101 set on the plate, round 1',
      '2101 round 1 Before the first pour | 2101 pour belly, round 1',
      '2101 round 1 Between layers | 2101 pour back, round 1',
      '2026-12-01 Before heat | 2101 set on the plate, round 2',
      '2101 round 2 Before the first pour | 2101 pour belly, round 2',
      '2101 round 2 Between layers | 2101 pour back, round 2',
      '2101 Before packing | 2101 pack',
    ]);
  });

  test('between layers is read once a round, however many layers there are', () => {
    const [belly, back] = FACTS.layers;
    if (!belly || !back) throw new Error('two layers');
    const facts = { ...FACTS, layers: [{ ...belly, layer: 'base' }, belly, back] };
    const rows = checklistRows(DAY_TABLE, new Map([['2101', facts]]), FRAME);
    const between = rows.filter(({ id }) => id.endsWith('Between layers'));
    expect(between.map(({ id }) => id)).toEqual([
      '2101 round 1 Between layers',
      '2101 round 2 Between layers',
    ]);
  });

  test('a pause lists five to nine short items with the figures of its run', () => {
    for (const { text, to } of ROWS) {
      if (to !== undefined) continue;
      const [head = '', ...items] = text.split('\n');
      expect(head).toMatch(/^STOP .*:$/);
      expect(items.length).toBeGreaterThanOrEqual(5);
      expect(items.length).toBeLessThanOrEqual(9);
    }
    expect(rowOf('2101 round 1 Before the first pour').text).toContain(
      '• Every mold top reads 214 °F',
    );
  });

  test('an order without a plan of its own has its tasks in bare words and no pauses', () => {
    const bare = checklistRows(DAY_TABLE, new Map(), FRAME);
    expect(bare.map(({ id }) => id)).toEqual(DAY_TABLE.entries.map(({ id }) => id));
    expect(bare.map(({ text }) => text).join(' ')).not.toMatch(/undefined|NaN/);
  });
});
