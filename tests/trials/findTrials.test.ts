import { describe, expect, test } from 'vitest';
import type { HeatTrial } from '../../shared/heat/fit/heatTrial.ts';
import { trialTops } from '../../shared/heat/fit/heatTrial.ts';
import { moldBlock } from '../../shared/trials/contact/heatRow.ts';
import { heatTrialOf } from '../../shared/trials/contact/heatTrialOf.ts';
import { findPlateOf } from '../../shared/trials/findPlateOf.ts';
import { findTrials, noMissingCells } from '../../shared/trials/findTrials.ts';
import type { Proposal } from '../../shared/trials/proposal.ts';
import { BENCH, type TrialRows, trialBookOf } from './trialCells.ts';

const ROW = { trial: 'T-1', mold: 'Stick', plate: 'Griddle', setting: 132 } as const;
const MINUTES = [5, 10, 15, 20, 30, 45];

interface Made {
  readonly contact: number;
  readonly lossShare?: number;
  readonly row?: Readonly<Record<string, string | number>>;
  readonly minutes?: readonly number[];
  readonly off?: () => number;
}

/** Rows of Heat trials as a plate of that contact would give them. */
function heated({ contact, lossShare = 1, row = {}, minutes = MINUTES, off = () => 0 }: Made) {
  const line = { ...ROW, ...row };
  const tops = trialTops(
    trialOf(line),
    minutes.map((one) => one * 60),
    { contact, lossShare },
  );
  return minutes.map((one, index) => ({
    ...line,
    minutes: one,
    topTemperature: (tops[index] ?? 0) + off(),
  }));
}

/** The heating of a row, set up as the plan sets up its plate. */
function trialOf(line: Readonly<Record<string, string | number>>): HeatTrial {
  const book = trialBookOf({});
  const gaps = noMissingCells(book);
  const plate = findPlateOf(gaps, String(line['plate']));
  const mold = book.index.molds.get(String(line['mold']).toLowerCase());
  const block = mold && moldBlock(gaps, mold);
  if (!plate || !block) throw new Error('no such plate or mold');
  const heating = {
    trial: 'T',
    mold: '',
    setting: Number(line['setting']),
    roomTemperature: Number(line['roomTemperature'] ?? 22),
    moldsOnPlate: Number(line['moldsOnPlate'] ?? 1),
    start: line['start'] === 'hot' ? ('hot' as const) : ('cold' as const),
    lid: line['lid'] === 'lid' ? ('lid' as const) : ('none' as const),
    readings: [],
  };
  return heatTrialOf(heating, block, plate, book.index.book.shop);
}

function only(rows: TrialRows): Proposal {
  const { proposals, problems } = findTrials(trialBookOf(rows));
  expect(problems).toEqual([]);
  expect(proposals).toHaveLength(1);
  const [proposal] = proposals;
  if (proposal === undefined) throw new Error('nothing found');
  return proposal;
}

function fitted({ result }: Proposal) {
  if (result.kind !== 'fitted') throw new Error(JSON.stringify(result));
  return result;
}

/** Scatter of a probe, the same every time: sums of twelve uniform numbers less 6. */
function scatter(first: number): () => number {
  let last = first;
  const uniform = () => {
    last = (last * 16_807) % 2_147_483_647;
    return last / 2_147_483_647;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, one) => sum + one, -6);
}

describe('heat trials', () => {
  test.each([
    { row: {} },
    { row: { roomTemperature: 12 } },
    { row: { moldsOnPlate: 2 } },
    { row: { lid: 'lid' }, lossShare: 1 },
    { row: { start: 'hot' } },
    { row: { plate: 'Slab' } },
  ])('give back the contact and the loss that made them, with $row', ({ row, lossShare = 1.1 }) => {
    const result = fitted(only({ heatTrials: heated({ contact: 85, lossShare, row }) }));
    // The fit ends at steps of a millionth; the curve is followed to 1e-4 K.
    expect(result.figure.value).toBeNear(85, { relative: 1e-3 });
    expect(result.heatLoss?.value ?? result.assumedLoss).toBeNear(lossShare, { relative: 0.1 });
    expect(result.count).toBe(6);
  });

  test('of a cold and of a hot start differ: a room of another day too', () => {
    const rows = heated({ contact: 85 });
    const wrong = rows.map((row) => ({ ...row, start: 'hot' }));
    expect(fitted(only({ heatTrials: wrong })).figure.value).toBeLessThan(75);
    const warmer = rows.map((row) => ({ ...row, roomTemperature: 32 }));
    expect(fitted(only({ heatTrials: warmer })).figure.value).toBeLessThan(83);
  });

  test('on one plate are fitted together, whatever molds stood on it', () => {
    const first = heated({ contact: 85 });
    const second = heated({ contact: 85, row: { trial: 'T-2', mold: 'Worm', setting: 140 } });
    const both = only({ heatTrials: [...first, ...second] });
    const one = only({ heatTrials: first });
    expect(fitted(both).figure.value).toBeNear(85, { relative: 1e-3 }); // as above
    expect(fitted(both).figure.standardError).toBeLessThan(0.85 * fitted(one).figure.standardError);
    expect(both.trials).toEqual([{ trial: 'T-1' }, { trial: 'T-2' }]);
    expect(both.pictures.map(({ title }) => title)).toEqual([
      'Stick, plate at 132 °C',
      'Worm, plate at 140 °C',
    ]);
  });

  test('alike in all share a picture, whose residuals are the fit’s own', () => {
    const first = heated({ contact: 85, off: scatter(3) });
    const again = heated({
      contact: 85,
      row: { trial: 'T-2', date: '2026-11-02' },
      off: scatter(5),
    });
    const { pictures, trials } = only({ heatTrials: [...first, ...again] });
    expect(trials).toEqual([{ trial: 'T-1' }, { trial: 'T-2', date: '2026-11-02' }]);
    expect(pictures).toHaveLength(1);
    const [picture] = pictures.filter((one) => one.kind === 'heat-trial');
    expect(picture?.readings).toHaveLength(12);
    for (const { seconds, top, off = Number.NaN } of picture?.readings ?? []) {
      const at = picture?.curve.find((point) => point.seconds === seconds);
      // Both from the same curve, each followed to 1e-4 K.
      expect(top - (at?.top ?? 0)).toBeNear(off, { absolute: 1e-3 });
    }
    // 100 °C at sea level and the shop's 3 K above it.
    expect(picture?.target).toBeNear(103, { absolute: 0.1 });
    expect(picture?.curve.at(-1)?.seconds).toBe(2700);
  });

  test('may stand in any order', () => {
    const rows = heated({ contact: 85, off: scatter(7) });
    const sorted = fitted(only({ heatTrials: rows }));
    expect(fitted(only({ heatTrials: [...rows].reverse() }))).toEqual(sorted);
  });

  test('of a plate that has a loss of its own leave it where they cannot tell it', () => {
    const plates = [{ ...BENCH.plates?.[0], heatLoss: 0.7 }];
    const early = heated({ contact: 85, lossShare: 0.7, minutes: [5, 10, 15] });
    const result = fitted(
      only({ plates: plates as TrialRows['plates'], heatTrials: early } as TrialRows),
    );
    expect(result).toMatchObject({ assumedLoss: 0.7 });
    expect(result.figure.value).toBeNear(85, { relative: 1e-3 }); // as above
  });

  test('known by their scatter: the truth lies within two standard errors 19 times out of 20', () => {
    const off = scatter(1926);
    const rounds = 60;
    let inside = 0;
    for (let round = 0; round < rounds; round += 1) {
      const rows = heated({ contact: 85, lossShare: 1.05, off: () => 2 * off() });
      const more = heated({
        contact: 85,
        lossShare: 1.05,
        row: { trial: 'T-2', mold: 'Worm', setting: 138 },
        off: () => 2 * off(),
      });
      const { figure, heatLoss } = fitted(only({ heatTrials: [...rows, ...more] }));
      if (Math.abs(figure.value - 85) < 2 * figure.standardError) inside += 1;
      if (heatLoss && Math.abs(heatLoss.value - 1.05) < 2 * heatLoss.standardError) inside += 1;
    }
    // 95 % of 120 is 114, give or take 2.4; errors never below the probe's own make it more.
    expect(inside).toBeGreaterThanOrEqual(108);
    expect(inside).toBeLessThan(120);
  });

  test.each([
    { off: () => 60, because: 'tops hotter than any contact gives', minutes: MINUTES },
    { off: () => -90, because: 'tops colder than any contact gives', minutes: [30, 40, 50] },
    { off: () => 0, because: 'fewer than two readings', minutes: [10] },
  ])('say why they give nothing: $because', ({ off, because, minutes }) => {
    const proposal = only({ heatTrials: heated({ contact: 85, off, minutes }) });
    expect(proposal.result).toEqual({ kind: 'no fit', because });
    expect(proposal).toMatchObject({ isInUse: false, present: { value: 100, from: 'default' } });
    const [picture] = proposal.pictures;
    expect(picture && 'readings' in picture && picture.readings).toHaveLength(minutes.length);
  });
});

describe('rows that cannot be used', () => {
  const rows = heated({ contact: 85 });
  const told = (changed: Readonly<Record<string, string | number>>, at = 1) => {
    const heatTrials = rows.map((row, index) => (index === at ? { ...row, ...changed } : row));
    return findTrials(trialBookOf({ heatTrials })).problems;
  };

  test.each([
    { changed: { trial: '' }, heading: 'Trial', text: 'trial must be given, got nothing' },
    {
      changed: { minutes: -1 },
      heading: 'Minutes',
      text: 'minutes must be at least 0 min, got -1 min',
    },
    {
      changed: { topTemperature: 301 },
      heading: 'Mold top',
      text: 'mold top must be at most 300 °C, got 301 °C',
    },
    {
      changed: { minutes: 5 },
      heading: 'Minutes',
      text: 'minutes must be another time than in row 2, of the same trial, got 5 min',
    },
    {
      changed: { plate: 'Slab' },
      heading: 'Plate',
      text: 'plate must be as in row 2, of the same trial, got "Slab"',
    },
    {
      changed: { mold: '=1+1' },
      heading: 'Mold',
      text: 'mold must be listed in Molds, got "=1+1"',
    },
  ])('are named: $text', ({ changed, heading, text }) => {
    expect(told(changed)).toEqual([{ sheet: 'Heat trials', row: 3, heading, text }]);
  });

  test('a lid that comes in later is at odds with the rows that had none, not with blank ones', () => {
    expect(told({ lid: 'lid' })).toEqual([]);
    const heatTrials = rows.map((row, index) => ({ ...row, lid: index === 1 ? 'lid' : 'none' }));
    expect(findTrials(trialBookOf({ heatTrials })).problems).toEqual([
      {
        sheet: 'Heat trials',
        row: 3,
        heading: 'Lid',
        text: 'lid must be as in row 2, of the same trial, got "lid"',
      },
    ]);
  });

  test('a dial no hotter than the room is named once, and the trial left out', () => {
    const heatTrials = rows.map((row) => ({ ...row, setting: 20 }));
    expect(findTrials(trialBookOf({ heatTrials }))).toMatchObject({
      proposals: [],
      problems: [
        {
          sheet: 'Heat trials',
          row: 2,
          heading: 'Setting',
          text: 'setting must be greater than room temperature (22 °C), got 20 °C',
        },
      ],
    });
  });

  test('a mold with no size and a plate with no warm-up are named where they stand', () => {
    const blank = rows.map((row) => ({ ...row, mold: 'Blank' }));
    expect(findTrials(trialBookOf({ heatTrials: blank }))).toMatchObject({
      proposals: [],
      problems: [
        { sheet: 'Molds', row: 4, heading: 'Block length' },
        { sheet: 'Molds', row: 4, heading: 'Block width' },
        { sheet: 'Molds', row: 4, heading: 'Block height' },
      ],
    });
    const plates = [{ plate: 'Griddle', kind: 'thin griddle', highestSetting: 204 }];
    expect(findTrials(trialBookOf({ heatTrials: rows, plates })).problems).toEqual([
      { sheet: 'Plates', row: 2, heading: 'Warm-up', text: 'warm-up must be given, got nothing' },
    ]);
  });

  test.each([
    { changed: { highestSetting: 15 } },
    { changed: { watts: 1, warmUp: 0.1 } },
    { changed: { watts: 100_000, warmUp: 120 } },
    { changed: { usableLength: 1, usableWidth: 1 } },
    { changed: { dialOffset: -60 } },
    { changed: { dialOffset: 60, heatLoss: 5 } },
  ])('a plate of odd figures is answered all the same: $changed', ({ changed }) => {
    const plates = [{ ...BENCH.plates?.[0], ...changed }] as TrialRows['plates'];
    const { proposals, problems } = findTrials(
      trialBookOf({ heatTrials: rows, plates } as TrialRows),
    );
    expect(problems).toEqual([]);
    expect(proposals).toHaveLength(1);
    // What goes to a page holds no figure that JSON would lose.
    expect(JSON.parse(JSON.stringify(proposals))).toEqual(proposals);
  });
});
