import { describe, expect, test } from 'vitest';
import { openBench } from '../openBench.ts';

/** A Tuesday in Denver, seven in the morning. */
let clock = new Date('2026-12-01T14:00:00Z');
/** What the platform tells of who ticks. */
let email = () => '';

const book = openBench({ now: () => clock, email: () => email() });

const ASKED = { orders: '1009', firstDay: '2026-12-01', days: '5' };

interface Line {
  readonly row: number;
  readonly done: string;
  readonly from: string;
  readonly text: string;
  readonly person: string;
  readonly at: string;
  readonly who: string;
  readonly id: string;
  readonly place: string;
}

function lines(): readonly Line[] {
  const [, ...rows] = book.host.texts('Checklist', 'A:K');
  return rows
    .map(
      (
        [
          done = '',
          from = '',
          text = '',
          ,
          person = '',
          at = '',
          who = '',
          ,
          ,
          id = '',
          place = '',
        ],
        index,
      ) => ({
        ...{ row: index + 2, done, from, text, person, at, who, id, place },
      }),
    )
    .filter(({ id }) => id !== '');
}

function lineOf(id: string): Line {
  const found = lines().find((line) => line.id === id);
  if (!found) throw new Error(`no line ${id}`);
  return found;
}

function type(id: string, column: 'A' | 'F' | 'G', text: string): void {
  book.host.type('Checklist', `${column}${lineOf(id).row}`, text);
}

/** Runs behind every trigger that waits. */
async function triggered(): Promise<void> {
  await book.ask('startDay', {});
}

function sheetId(name: string): string {
  const { sheets } = book.host.snapshot().workbook as {
    readonly sheets: Readonly<Record<string, { readonly name: string }>>;
  };
  const found = Object.entries(sheets).find(([, sheet]) => sheet.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found[0];
}

/** Changes what a window changes. */
function change(id: string, params: object, origin = 'w1'): string {
  return book.host.apply({ madeAt: book.host.snapshot().sequence, id, params, origin }).kind;
}

function rename(from: string, to: string): void {
  const params = { subUnitId: sheetId(from), name: to };
  expect(change('sheet.mutation.set-worksheet-name', params)).toBe('applied');
}

const FIRST = '1009 lay out';
const PAUSE = '2026-12-01 Before heat';
const SET = '1009 set on the plate, round 1';

describe('the checklist', { timeout: 30_000 }, () => {
  test('has a line for every task and pause of the plan, at the times of the clock on the wall', async () => {
    const plan = await book.ask('planDayFor', ASKED);
    if (plan.kind !== 'ok') throw new Error('it can be planned');
    const written = await book.ask('writeChecklist', ASKED);
    expect(written).toEqual({ kind: 'ok', sheet: 'Checklist', lines: lines().length });
    const ids = lines().map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(plan.plan.entries.map(({ id }) => id)));
    const [first] = plan.plan.entries;
    expect([first?.id, first?.from]).toEqual([FIRST, 8 * 3600]);
    expect(lineOf(FIRST)).toMatchObject({ done: 'FALSE', from: 'Tue 8:00 AM', at: '', who: '' });
    expect(lines().map(({ place }) => Number(place))).toEqual(lines().map((_, index) => index + 1));
  });

  test('a tick gets the time of its trigger, and loses it when it is taken back', async () => {
    clock = new Date('2026-12-01T15:12:00Z');
    type(FIRST, 'A', 'TRUE');
    await triggered();
    expect(lineOf(FIRST)).toMatchObject({ done: 'TRUE', at: 'Tue 8:12 AM', who: '' });
    type(FIRST, 'A', 'FALSE');
    await triggered();
    expect(lineOf(FIRST)).toMatchObject({ done: 'FALSE', at: '' });
  });

  test('a tick names who is in People, nobody else, and keeps its time where the platform refuses', async () => {
    const [person = ''] = book.host.texts('People', 'A2')[0] ?? [];
    const tick = async (tells: () => string) => {
      email = tells;
      type(FIRST, 'A', 'TRUE');
      await triggered();
      const { at, who } = lineOf(FIRST);
      type(FIRST, 'A', 'FALSE');
      await triggered();
      email = () => '';
      return { isTimed: at !== '', who };
    };
    expect(await tick(() => `${person.toLowerCase()}@example.com`)).toEqual({
      isTimed: true,
      who: person,
    });
    expect(await tick(() => 'office@example.com')).toEqual({ isTimed: true, who: '' });
    const refuses = () => {
      throw new Error('You do not have permission to call User.getEmail.');
    };
    expect(await tick(refuses)).toEqual({ isTimed: true, who: '' });
  });

  test('a time and a name that people wrote themselves stay', async () => {
    type(PAUSE, 'F', '12/1/2026 8:05:00');
    type(PAUSE, 'G', 'AK');
    type(PAUSE, 'A', 'TRUE');
    type(FIRST, 'A', 'TRUE');
    await triggered();
    expect(lineOf(PAUSE)).toMatchObject({ at: 'Tue 8:05 AM', who: 'AK' });
    expect(lineOf(FIRST)).toMatchObject({ at: 'Tue 8:12 AM' });
  });

  test('writing it anew with another order keeps every tick and sorts all lines by their times', async () => {
    const answer = await book.ask('writeChecklist', { ...ASKED, orders: '1009, 1007' });
    expect(answer.kind).toBe('ok');
    expect(lineOf(PAUSE)).toMatchObject({ done: 'TRUE', at: 'Tue 8:05 AM', who: 'AK' });
    expect(lineOf(FIRST)).toMatchObject({ done: 'TRUE', at: 'Tue 8:12 AM' });
    const ids = lines().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(expect.arrayContaining([FIRST, SET, '1007 lay out']));
    const froms = book.host
      .values('Checklist', `B2:B${ids.length + 1}`)
      .map(([from]) => (from instanceof Date ? from.getTime() : Number.NaN));
    expect(froms).toEqual(froms.slice().sort((one, other) => one - other));
  });

  test('lines of an order that is no longer planned go, unless somebody ticked them', async () => {
    type('1007 lay out', 'A', 'TRUE');
    await triggered();
    await book.ask('writeChecklist', ASKED);
    const left = lines().filter(({ id }) => id.startsWith('1007 '));
    expect(left).toMatchObject([{ id: '1007 lay out', done: 'TRUE' }]);
  });

  test('ticks that come while it is written are neither lost nor doubled', async () => {
    const wanted = lines()
      .filter(({ done, id }) => done === 'FALSE' && id !== '')
      .slice(5, 13)
      .map(({ id }) => id);
    const before = lines()
      .filter(({ done }) => done === 'TRUE')
      .map(({ id }) => id);
    const writing = book.ask('writeChecklist', { ...ASKED, orders: '1009, 1007' });
    for (const id of wanted) {
      await new Promise((resolve) => setTimeout(resolve, 90));
      // Each where the line stands at that moment, as a person would.
      type(id, 'A', 'TRUE');
    }
    expect((await writing).kind).toBe('ok');
    await triggered();
    const ticked = lines()
      .filter(({ done }) => done === 'TRUE')
      .map(({ id }) => id);
    expect(ticked.slice().sort()).toEqual([...before, ...wanted].sort());
    // The last trigger gave a time to those whose own was dropped.
    type(SET, 'A', 'TRUE');
    await triggered();
    expect(lines().filter(({ done, at }) => done === 'TRUE' && at === '')).toEqual([]);
  });

  test('two windows that tick at once both have their tick', async () => {
    const free = lines()
      .filter(({ done }) => done === 'FALSE')
      .slice(0, 2);
    const subUnitId = sheetId('Checklist');
    const madeAt = book.host.snapshot().sequence;
    const done = free.map(({ row }, window) =>
      book.host.apply({
        madeAt,
        id: 'sheet.mutation.set-range-values',
        params: { subUnitId, cellValue: { [row - 1]: { 0: { v: 1, t: 3 } } } },
        origin: `w${window}`,
      }),
    );
    expect(done.map(({ kind }) => kind)).toEqual(['applied', 'applied']);
    await triggered();
    for (const line of free)
      expect(lineOf(line.id)).toMatchObject({ done: 'TRUE', at: 'Tue 8:12 AM' });
  });
});

describe('the checklist after a late morning', { timeout: 30_000 }, () => {
  const late = { ...ASKED, orders: '1008' };
  const [start, set] = ['1008 lay out', '1008 set on the plate, round 1'];

  test('what is ticked stays, the rest moves behind now, with the same lines', async () => {
    await book.ask('writeChecklist', late);
    const before = lines();
    clock = new Date('2026-12-01T17:30:00Z');
    type(start, 'A', 'TRUE');
    await triggered();
    const written = await book.ask('updateChecklist', {});
    expect(written).toMatchObject({ kind: 'ok' });
    expect(lineOf(start)).toMatchObject({ done: 'TRUE', at: 'Tue 10:30 AM' });
    expect(
      lines()
        .map(({ id }) => id)
        .sort(),
    ).toEqual(before.map(({ id }) => id).sort());
    const moved = book.host.values('Checklist', `B${lineOf(set).row}`)[0]?.[0];
    expect(moved instanceof Date && moved.getTime()).toBeGreaterThanOrEqual(clock.getTime());
    const replanned = await book.ask('replanDayFor', {});
    expect(replanned).toMatchObject({ kind: 'ok', untimed: [], ahead: [] });
  });

  test('a tick without a time is told from one with a time', async () => {
    type(start, 'F', 'soon');
    await triggered();
    expect(await book.ask('replanDayFor', {})).toMatchObject({ untimed: [start] });
  });
});

describe('the next pour day', { timeout: 30_000 }, () => {
  test('takes the sheet over, though not one line of the last one stays', async () => {
    expect(lines().length).toBeGreaterThan(20);
    clock = new Date('2026-12-08T14:00:00Z');
    const next = { orders: '1010', firstDay: '2026-12-08', days: '5' };
    const answer = await book.ask('writeChecklist', next);
    expect(answer).toMatchObject({ kind: 'ok' });
    await book.host.settled();
    const written = lines();
    expect(answer.kind === 'ok' && answer.lines).toBe(written.length);
    expect(written.filter(({ id }) => id.includes('1009'))).toEqual([]);
    expect(written.map(({ place }) => Number(place))).toEqual(written.map((_, at) => at + 1));
    clock = new Date('2026-12-01T14:00:00Z');
  });
});

describe('what the checklist leaves alone', { timeout: 30_000 }, () => {
  test('names that look like formulas stay text', async () => {
    book.host.type('People', 'A2', '\'=HYPERLINK("http://x","y")');
    await book.host.settled();
    const answer = await book.ask('writeChecklist', ASKED);
    expect(answer.kind).toBe('ok');
    const persons = new Set(lines().map(({ person }) => person));
    expect([...persons].some((name) => name.startsWith('=HYPERLINK('))).toBe(true);
  });

  test('a plan of nothing writes nothing and says so', async () => {
    const before = lines();
    expect(await book.ask('writeChecklist', { ...ASKED, orders: '9999' })).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'No order has a place in these days, so there is nothing to write.',
        },
      ],
    });
    expect(lines()).toEqual(before);
  });

  test('a column that somebody took out is named, and nothing is written', async () => {
    book.host.type('Checklist', 'G1', 'Notes');
    const refused = {
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'The sheet Checklist has lost its column Done by: put the heading back in its first row, or give the sheet another name.',
        },
      ],
    };
    expect(await book.ask('writeChecklist', ASKED)).toEqual(refused);
    expect(await book.ask('replanDayFor', {})).toEqual(refused);
    book.host.type('Checklist', 'G1', 'Done by');
  });

  test('its planned columns ask before they are edited by hand; ticks do not', async () => {
    const { values } = book.host.snapshot();
    const protections = values.find(({ id }) => id === 'workbench.protections')?.params;
    const columns = (
      protections as { description: string; warningOnly: boolean; box: { startColumn: number } }[]
    )
      .filter(({ description }) => description.startsWith('Checklist: '))
      .map(({ box, warningOnly }) => [box.startColumn, warningOnly]);
    expect(columns.sort()).toEqual([1, 10, 2, 3, 4, 7, 8, 9].map((column) => [column, true]));
  });
});

describe('a sheet of somebody else named Checklist', { timeout: 30_000 }, () => {
  test('is not overwritten', async () => {
    const { host } = book;
    rename('Checklist', 'List of last week');
    rename('Payments', 'Checklist');
    host.type('Checklist', 'A1', 'Groceries');
    expect(await book.ask('writeChecklist', ASKED)).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'The sheet Checklist was not made by this add-on and would be overwritten: give it another name first.',
        },
      ],
    });
    expect(host.values('Checklist', 'A1')).toEqual([['Groceries']]);
  });
});
