import { describe, expect, onTestFinished, test } from 'vitest';
import { columnLetters } from '../../../shared/book/layout/ordersFormula.ts';
import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import { TABLES, type TableKey } from '../../../shared/book/tables.ts';
import type { AnswerOf } from '../../../shared/commands/commandTypes.ts';
import { openMemoryBook } from '../openMemoryBook.ts';

/** One book for all: each test leaves the figures as it found them. */
const book = openMemoryBook();

type Trials = Extract<AnswerOf<'readTrials'>, { kind: 'ok' }>;

async function readTrials(): Promise<Trials> {
  const answer = await book.ask('readTrials', {});
  if (answer.kind !== 'ok') throw new Error(JSON.stringify(answer));
  return answer;
}

async function proposal(figure: string, of: string) {
  const found = (await readTrials()).proposals.find(
    (one) => one.figure === figure && one.of === of,
  );
  if (found === undefined) throw new Error(`no proposal for ${figure} of ${of}`);
  return found;
}

function letterOf(key: TableKey, name: string): string {
  return columnLetters(Object.keys(TABLES[key].columns).indexOf(name) + 1);
}

/** A cell of a table by its column. */
function cell(key: TableKey, name: string, row: number): unknown {
  const at = `${letterOf(key, name)}${row}`;
  return book.host.values(TABLES[key].sheet, at)[0]?.[0];
}

/** Every row of the journal by its headings. */
function journal(): readonly Readonly<Record<string, unknown>>[] {
  const columns = Object.values(TABLES.measuredFigures.columns);
  const last = columnLetters(columns.length);
  const rows = book.host.values('Measured figures', `A2:${last}60`);
  return rows
    .filter(([entry]) => entry !== '')
    .map((row) =>
      Object.fromEntries(columns.map((column, index) => [headingOf(column, 'US'), row[index]])),
    );
}

const FIGURE_TABLES = ['molds', 'materials', 'plates', 'heatTrials', 'benchTrials'] as const;

/** Everything on the sheets that trials are read from and figures written to. */
function everything(): string {
  const tables = FIGURE_TABLES.map((key) => {
    const last = columnLetters(Object.keys(TABLES[key].columns).length);
    return book.host.values(TABLES[key].sheet, `A1:${last}60`);
  });
  return JSON.stringify([...tables, book.host.values('Shop', 'A1:D30')]);
}

async function typeFor(sheet: string, cells: Readonly<Record<string, string>>): Promise<void> {
  const before = Object.keys(cells).map(
    (at) => [at, book.host.texts(sheet, at)[0]?.[0] ?? ''] as const,
  );
  for (const [at, text] of Object.entries(cells)) book.host.type(sheet, at, text);
  await book.host.settled();
  onTestFinished(async () => {
    for (const [at, text] of before) book.host.type(sheet, at, text);
    await book.host.settled();
  });
}

/** Takes back the last adoption of a figure when the test is over. */
async function takeBack(figure: string, of: string): Promise<void> {
  const { back } = await proposal(figure, of);
  if (back?.kind !== 'ready') throw new Error('nothing to take back');
  expect(await book.ask('revertFigure', { figure, of, entry: back.entry })).toMatchObject({
    changed: 'now',
  });
}

async function adopt(figure: string, of: string, more: object = {}) {
  const answer = await book.ask('adoptFigure', { figure, of, ...more });
  await book.host.settled();
  return answer;
}

/** Minutes that the plate of an order takes, and the running time of its oven. */
async function planOf(order: string) {
  const answer = await book.ask('planSelectedOrder', { order });
  if (answer.kind !== 'ok' || answer.plan.kind !== 'plan') throw new Error(JSON.stringify(answer));
  const { plate, cookTime } = answer.plan;
  return { plate, cookTime };
}

const GRIDDLE = { figure: 'contact', of: 'Griddle A' } as const;

describe('readTrials', () => {
  test('gives every figure of the demo shop beside the one in use, and nothing to mend', async () => {
    const { proposals, problems, system } = await readTrials();
    expect([system, problems]).toEqual(['US', []]);
    expect(proposals.map(({ figure, of, result }) => [figure, of, result.kind])).toEqual([
      ['contact', 'Griddle A', 'fitted'],
      ['contact', 'Bench plate B', 'fitted'],
      ['setTemperature', 'Plastisol medium', 'fitted'],
      ['microwaveEfficiency', '', 'fitted'],
      ['dropVolume', 'Black', 'fitted'],
      ['bondTemperature', '', 'fitted'],
    ]);
    const [griddle, plate] = proposals;
    expect(griddle).toMatchObject({
      present: { value: 96, from: 'own' },
      isInUse: false,
      trials: [
        { trial: 'T-1', date: '2026-10-30' },
        { trial: 'T-3', date: '2026-11-06' },
      ],
    });
    expect(plate).toMatchObject({ present: { value: 500, from: 'default' } });
    if (griddle?.result.kind !== 'fitted') throw new Error('not fitted');
    // The demo readings were made with a contact of 85 W/m2K and 1.05 of the usual loss.
    const { figure, heatLoss } = griddle.result;
    expect(Math.abs(figure.value - 85)).toBeLessThan(2 * figure.standardError);
    expect(Math.abs((heatLoss?.value ?? 0) - 1.05)).toBeLessThan(
      2 * (heatLoss?.standardError ?? 0),
    );
    expect(figure.standardError / figure.value).toBeLessThan(0.05);
    const readings = griddle.pictures.flatMap((one) =>
      one.kind === 'heat-trial' ? [one.readings.length] : [],
    );
    expect(readings).toEqual([6, 5]);
  });

  test('names each row that it leaves out, by sheet, row and heading', async () => {
    const at = (name: string, row: number) => `${letterOf('heatTrials', name)}${row}`;
    const bench = (name: string, row: number) => `${letterOf('benchTrials', name)}${row}`;
    await typeFor('Heat trials', {
      [at('mold', 3)]: 'No such mold',
      [at('minutes', 5)]: '5',
      [at('setting', 6)]: '300',
      [at('topTemperature', 8)]: 'hot',
      [at('plate', 14)]: '',
    });
    await typeFor('Bench trials', { [bench('seconds', 2)]: '3', [bench('material', 7)]: 'Blak' });
    const { problems, proposals } = await readTrials();
    expect(problems).toEqual([
      {
        sheet: 'Heat trials',
        row: 3,
        heading: 'Mold',
        text: 'mold must be listed in Molds, got "No such mold"',
      },
      {
        sheet: 'Heat trials',
        row: 5,
        heading: 'Minutes',
        text: 'minutes must be another time than in row 2, of the same trial, got 5 min',
      },
      {
        sheet: 'Heat trials',
        row: 6,
        heading: 'Setting',
        text: 'setting must be as in row 2, of the same trial, got 300 °F',
      },
      {
        sheet: 'Heat trials',
        row: 8,
        heading: 'Mold top',
        text: 'mold top must be a number (°F), got "hot"',
      },
      {
        sheet: 'Heat trials',
        row: 14,
        heading: 'Plate',
        text: 'plate must be given, got nothing',
      },
      {
        sheet: 'Bench trials',
        row: 7,
        heading: 'Material',
        text: 'material must be listed in Materials, got "Blak"',
      },
      {
        sheet: 'Bench trials',
        row: 2,
        heading: 'Kind',
        text: 'time until a puck set must be greater than 4 s, got 3 s',
      },
    ]);
    expect(proposals.find(({ of }) => of === 'Griddle A')?.result).toMatchObject({ count: 7 });
    expect(proposals.find(({ of }) => of === 'Black')?.result).toMatchObject({ count: 1 });
  });
});

describe('a contact', () => {
  test('in use, the plan follows it; taken back, all is as before', async () => {
    const [before, planned, rows] = [everything(), await planOf('1010'), journal().length];
    const answer = await adopt('contact', 'Griddle A', { who: 'AK' });
    expect(answer).toMatchObject({ kind: 'ok', changed: 'now' });
    const found = await proposal('contact', 'Griddle A');
    if (found.result.kind !== 'fitted') throw new Error('not fitted');
    const { figure, heatLoss } = found.result;
    const held = (name: string) => cell('plates', name, 2);
    // A cell keeps twelve digits.
    expect(held('contactConductance')).toBeNear(figure.value, { relative: 1e-11 });
    expect(held('contactError')).toBeNear(figure.standardError, { relative: 1e-11 });
    expect(held('heatLoss')).toBeNear(heatLoss?.value ?? 0, { relative: 1e-11 });
    expect(found).toMatchObject({
      isInUse: true,
      present: { from: 'own' },
      back: { kind: 'ready', before: 96, trials: 'T-1, T-3', date: '2026-12-01' },
    });
    const shared = { Change: 'put in use', Of: 'Griddle A', Trials: 'T-1, T-3', Who: 'AK' };
    expect(journal().slice(rows)).toMatchObject([
      { ...shared, Figure: 'contact conductance', Before: 96, Unit: 'W/m²·K' },
      { ...shared, Figure: 'contact error', Before: '', Unit: 'W/m²·K', 'Standard error': '' },
      { ...shared, Figure: 'heat loss', Before: '', Unit: '' },
    ]);
    expect(journal()[rows]).toMatchObject({
      After: held('contactConductance'),
      'Standard error': held('contactError'),
    });
    const after = await planOf('1010');
    if (planned.plate.kind !== 'reachable' || after.plate.kind !== 'reachable')
      throw new Error('not reachable');
    // From 96 down to about 81 W/m2K: a worse contact takes longer.
    expect(after.plate.heatUp).toBeGreaterThan(planned.plate.heatUp + 30);

    await takeBack('contact', 'Griddle A');
    await book.host.settled();
    expect(everything()).toBe(before);
    expect(await planOf('1010')).toEqual(planned);
    expect(journal().slice(rows + 3)).toMatchObject([
      { Change: 'taken back', Figure: 'contact conductance', After: 96, Trials: 'T-1, T-3' },
      { Change: 'taken back', Figure: 'contact error', After: '' },
      { Change: 'taken back', Figure: 'heat loss', After: '' },
    ]);
    expect((await proposal('contact', 'Griddle A')).back).toBeUndefined();
  });

  test('a second person who asks the same writes nothing, and takes nothing back twice', async () => {
    const rows = journal().length;
    const both = await Promise.all([
      book.ask('adoptFigure', GRIDDLE),
      book.ask('adoptFigure', GRIDDLE),
    ]);
    expect(both).toMatchObject([{ changed: 'now' }, { changed: 'before' }]);
    expect(await adopt('contact', 'Griddle A')).toMatchObject({ changed: 'before' });
    expect(journal()).toHaveLength(rows + 3);
    const { back } = await proposal('contact', 'Griddle A');
    const entry = back?.kind === 'ready' ? back.entry : '';
    const taken = await Promise.all([
      book.ask('revertFigure', { ...GRIDDLE, entry }),
      book.ask('revertFigure', { ...GRIDDLE, entry }),
    ]);
    expect(taken).toMatchObject([{ changed: 'now' }, { changed: 'before' }]);
    await book.host.settled();
    expect(journal()).toHaveLength(rows + 6);
    expect(cell('plates', 'contactConductance', 2)).toBe(96);
  });

  test('goes where a blank cell was, and leaves it blank again', async () => {
    expect(cell('plates', 'contactConductance', 3)).toBe('');
    await adopt('contact', 'Bench plate B');
    expect(cell('plates', 'contactConductance', 3)).toBeGreaterThan(300);
    // Five readings over half an hour do not tell the loss of a thick plate.
    expect(cell('plates', 'heatLoss', 3)).toBe('');
    expect((await proposal('contact', 'Bench plate B')).back).not.toHaveProperty('before');
    await takeBack('contact', 'Bench plate B');
    await book.host.settled();
    expect(cell('plates', 'contactConductance', 3)).toBe('');
  });

  test('changed by hand since, it stays', async () => {
    await adopt('contact', 'Griddle A');
    const { back } = await proposal('contact', 'Griddle A');
    const entry = back?.kind === 'ready' ? back.entry : '';
    const at = `${letterOf('plates', 'contactConductance')}2`;
    const adopted = String(cell('plates', 'contactConductance', 2));
    book.host.type('Plates', at, '90');
    await book.host.settled();
    const rows = journal().length;
    expect((await proposal('contact', 'Griddle A')).back).toEqual({ kind: 'changed by hand' });
    expect(await book.ask('revertFigure', { ...GRIDDLE, entry })).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: `In Plates, row 2, contact conductance holds 90 W/m²·K and not the ${Math.round(Number(adopted))} W/m²·K that was put in use: it was changed by hand and stays as it is.`,
        },
      ],
    });
    expect([cell('plates', 'contactConductance', 2), journal().length]).toEqual([90, rows]);
    book.host.type('Plates', at, adopted);
    await book.host.settled();
    await takeBack('contact', 'Griddle A');
  });

  test('over an older measured one, is taken back step by step', async () => {
    await adopt('contact', 'Griddle A');
    const first = cell('plates', 'contactConductance', 2);
    const older = await proposal('contact', 'Griddle A');
    await typeFor('Heat trials', { [`${letterOf('heatTrials', 'topTemperature')}2`]: '86' });
    await adopt('contact', 'Griddle A');
    expect(cell('plates', 'contactConductance', 2)).not.toBe(first);
    const entry = older.back?.kind === 'ready' ? older.back.entry : '';
    expect(await book.ask('revertFigure', { ...GRIDDLE, entry })).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: expect.stringMatching(
            /^A newer figure was put in use since, as entry M-\d+ of Measured figures: take that back first\.$/,
          ),
        },
      ],
    });
    const { back } = await proposal('contact', 'Griddle A');
    await takeBack('contact', 'Griddle A');
    // The same click again must not take back the older one too.
    const newer = back?.kind === 'ready' ? back.entry : '';
    expect(await book.ask('revertFigure', { ...GRIDDLE, entry: newer })).toMatchObject({
      changed: 'before',
    });
    await book.host.settled();
    expect(cell('plates', 'contactConductance', 2)).toBe(first);
    await takeBack('contact', 'Griddle A');
    await book.host.settled();
    expect(cell('plates', 'contactConductance', 2)).toBe(96);
  });
});

describe('other figures', () => {
  test('a set temperature is written in the unit of its heading', async () => {
    const letter = letterOf('materials', 'setTemperature');
    await typeFor('Materials', { [`${letter}1`]: 'Set temperature (°C)' });
    const found = await proposal('setTemperature', 'Plastisol medium');
    const value = found.result.kind === 'fitted' ? found.result.figure.value : 0;
    expect(found.present).toEqual({ value: 92, from: 'default' });
    await adopt('setTemperature', 'Plastisol medium');
    expect(cell('materials', 'setTemperature', 2)).toBeNear(value, { relative: 1e-11 });
    expect(journal().at(-1)).toMatchObject({
      Figure: 'set temperature',
      Of: 'Plastisol medium',
      Trials: 'B-1',
      Unit: '°C',
      Before: '',
    });
    await takeBack('setTemperature', 'Plastisol medium');
    await book.host.settled();
    expect(cell('materials', 'setTemperature', 2)).toBe('');
  });

  test('a drop volume takes the place of the one that was there', async () => {
    await adopt('dropVolume', 'Black');
    const row = 7;
    // 2.31 g and 2.28 g of 50 drops of 1.2 g/mL are 38.5 and 38 µL, by hand.
    expect(cell('materials', 'dropVolume', row)).toBeNear(38.25, { absolute: 0.02 });
    expect(journal().at(-1)).toMatchObject({ Before: 40, Unit: 'µL' });
    await takeBack('dropVolume', 'Black');
    await book.host.settled();
    expect(cell('materials', 'dropVolume', row)).toBe(40);
  });

  test('the microwave’s share goes to Shop, and a cup then cooks as long as it says', async () => {
    const before = await planOf('1010');
    const found = await proposal('microwaveEfficiency', '');
    const share = found.result.kind === 'fitted' ? found.result.figure.value : 0;
    expect(await adopt('microwaveEfficiency', '')).toMatchObject({ changed: 'now' });
    const after = await planOf('1010');
    // Time goes with one over the share, which was 0.45.
    expect(after.cookTime).toBeNear((before.cookTime * 0.45) / share, { relative: 1e-9 });
    await takeBack('microwaveEfficiency', '');
    await book.host.settled();
    expect(await planOf('1010')).toEqual(before);
  });
});

describe('refusals, which write nothing', () => {
  test.each([
    { payload: {}, text: 'figure must be given, got nothing' },
    {
      payload: { figure: 'color' },
      text: 'figure must be one of contact, setTemperature, dropVolume, microwaveEfficiency, bondTemperature, got "color"',
    },
    {
      payload: { figure: 'contact', of: 'Griddle Z' },
      text: 'The book holds no trial of this for Griddle Z.',
    },
    { payload: { figure: 'contact', of: 7 }, text: 'of must be text, got 7' },
    {
      payload: { figure: 'contact', of: 'Griddle A', who: 'x'.repeat(21) },
      text: `who must be at most 20 characters long, got "${'x'.repeat(21)}"`,
    },
    {
      payload: { figure: 'contact', of: 'Griddle A', value: 'x' },
      text: 'value must be a field that this command knows, got "x"',
    },
  ])('adoptFigure with $payload', async ({ payload, text }) => {
    const rows = journal().length;
    expect(await book.ask('adoptFigure', payload)).toMatchObject({
      kind: 'refused',
      problems: [{ text }],
    });
    expect(journal()).toHaveLength(rows);
  });

  test('revertFigure wants an entry, and leaves alone what it does not know', async () => {
    expect(await book.ask('revertFigure', GRIDDLE)).toMatchObject({
      problems: [{ field: 'entry', text: 'entry must be given, got nothing' }],
    });
    const rows = journal().length;
    expect(await book.ask('revertFigure', { ...GRIDDLE, entry: 'M-999' })).toMatchObject({
      changed: 'before',
    });
    expect(journal()).toHaveLength(rows);
  });

  test('a cell that holds no number is left to the one who typed it', async () => {
    const at = `${letterOf('plates', 'contactError')}2`;
    await typeFor('Plates', { [at]: 'about 3' });
    const before = everything();
    expect(await adopt('contact', 'Griddle A')).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'In Plates, row 2: contact error must be a number (W/m²·K), got "about 3".',
        },
      ],
    });
    expect(everything()).toBe(before);
  });

  test('a book without a column or without the journal is to be set up first', async () => {
    await typeFor('Plates', { [`${letterOf('plates', 'heatLoss')}1`]: 'Something else' });
    const before = everything();
    const rows = journal().length;
    expect(await adopt('contact', 'Griddle A')).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'Plates lacks a readable column for Heat loss: choose Poursmith > Set up this workbook.',
        },
      ],
    });
    await typeFor('Measured figures', { A1: 'Something else' });
    expect(await adopt('dropVolume', 'Black')).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'Measured figures lacks a readable column for Entry: choose Poursmith > Set up this workbook.',
        },
      ],
    });
    expect([everything(), journal().length]).toEqual([before, rows]);
  });

  test('readings that no contact gives are not used', async () => {
    const letter = letterOf('heatTrials', 'topTemperature');
    const tops = Object.fromEntries([8, 9, 10, 11, 12].map((row) => [`${letter}${row}`, '60']));
    await typeFor('Heat trials', tops);
    expect(await adopt('contact', 'Bench plate B')).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'the mold is colder than any contact leaves it: check setting, block and minutes, and that no infrared thermometer looked at bare metal',
        },
      ],
    });
    expect(cell('plates', 'contactConductance', 3)).toBe('');
  });
});

describe('hostile text', () => {
  test.each(['=IMPORTXML("http://x.test","//a")', '<img src=x onerror=alert(1)>', "'=1+1"])(
    'stays text in the journal: %s',
    async (hostile) => {
      const letter = letterOf('benchTrials', 'trial');
      const typed = { [`${letter}7`]: `'${hostile}`, [`${letter}8`]: `'${hostile}` };
      await typeFor('Bench trials', typed);
      const who = hostile.slice(0, 20);
      expect(await adopt('dropVolume', 'Black', { who })).toMatchObject({ changed: 'now' });
      expect(journal().at(-1)).toMatchObject({ Trials: hostile, Who: who });
      await takeBack('dropVolume', 'Black');
      await book.host.settled();
      expect(journal().at(-1)).toMatchObject({ Trials: hostile, Change: 'taken back' });
    },
  );
});
