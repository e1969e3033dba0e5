import { describe, expect, test } from 'vitest';
import { POUR_CAUSE } from '../../../shared/functions/quality/POUR_CAUSE.ts';
import { causeCells } from '../../../shared/outcomes/causes/causeCells.ts';
import { causesSummary } from '../../../shared/outcomes/causes/causesSummary.ts';
import { bookCells } from '../../book/bookCells.ts';
import { errorText } from '../../heat/errorText.ts';
import { DEMO, logOf, round } from '../demoRound.ts';

const COLD = round({ entry: 'a', moldTop: 75, good: 9, coldCrack: 2, bleed: 1 });
const GOOD = round({ entry: 'b', round: 2 });

describe('causeCells', () => {
  test('each defect of a run with its causes, the likeliest first, and what heat does not explain', () => {
    const [headings, crack, ...more] = causeCells(logOf(COLD, GOOD), 'r-1 ');
    expect(headings).toEqual([
      'Round',
      'Defect',
      'Pieces',
      'Likely cause',
      'What the record shows',
      'What to do',
    ]);
    expect(crack).toEqual([
      'R-1 round 1',
      'Cold crack',
      2,
      'mold too cool at the first pour',
      'the mold top read 167 °F at the first pour, 46 °F below what it must read',
      'wait until the mold top itself reads 213 °F, whatever the dial says',
    ]);
    const last = more[more.length - 1] ?? [];
    expect(last.slice(0, 4)).toEqual([
      'R-1 round 1',
      'Bleed',
      1,
      'the heat record does not explain this',
    ]);
    expect(last[5]).toBe(
      'check: a colorant that dissolves in plasticizer: change it, or lay a clear layer between; pieces packed warm or under pressure with other colors',
    );
  });

  test('last takes the last round that came out bad; a good run has nothing to tell', () => {
    expect(causeCells(logOf(COLD, GOOD), 'last')[1]?.[0]).toBe('R-1 round 1');
    const nothing = [['', 'nothing came out bad', '', '', '', '']];
    expect(causeCells(logOf(GOOD), 'last').slice(1)).toEqual(nothing);
    expect(causeCells(logOf(GOOD), 'R-1').slice(1)).toEqual(nothing);
  });

  test('unnamed pieces, blank readings and a mold that is gone are said', () => {
    const { moldTop: _, ...blank } = round({ good: 8, coldCrack: 1, gap23: 90 });
    const cells = causeCells(logOf(blank), 'R-1').slice(1);
    expect(cells.map((row) => row[3])).toEqual([
      'too little is known to say: Mold top is blank',
      '',
    ]);
    expect(cells[1]).toEqual(['R-1 round 1', 'not named', 3, '', '', 'name the defect in the log']);
    expect(causeCells(logOf(round({ mold: 'Gone', good: 1 })), 'last')[1]).toEqual([
      'R-1 round 1',
      '',
      '',
      'no plan to hold it against',
      'mold must be listed in Molds, got "Gone"',
      '',
    ]);
  });

  test('a run that the log does not hold is refused', () => {
    expect(errorText(() => causeCells(DEMO, 'R-9'))).toBe(
      'run must be listed in Pour log, got "R-9"',
    );
  });

  test('POUR_CAUSE gives the same from the cells of the sheets', () => {
    const book = { ...logOf(COLD), heatTrials: [] };
    expect(POUR_CAUSE.compute(bookCells(book), { run: 'last' }, 'US')).toEqual(
      causeCells(book, 'last'),
    );
  });
});

describe('causesSummary', () => {
  test('shows the last bad round and lists the bad ones, the last first', () => {
    const shown = causesSummary(logOf(COLD, GOOD, round({ round: 3, tear23: 'peels clean' })));
    expect(shown?.rounds.map(({ label }) => label)).toEqual(['R-1 round 3', 'R-1 round 1']);
    expect(shown?.shown?.row).toBe(4);
  });

  test('a corrected row is stood for by its correction', () => {
    const book = logOf(COLD, round({ entry: 'c', corrects: 'a', good: 11, flash: 1 }));
    const shown = causesSummary(book, 2);
    expect(shown?.insteadOf).toBe(2);
    expect(shown?.shown?.row).toBe(3);
    expect(shown?.rounds.map(({ row }) => row)).toEqual([3]);
  });

  test('a good row may be asked about; a row that is not there has no answer; an empty log shows none', () => {
    expect(causesSummary(logOf(GOOD), 2)?.shown).toMatchObject({ causes: [], unexplained: [] });
    expect(causesSummary(logOf(GOOD), 9)).toBeUndefined();
    expect(causesSummary(logOf())).toEqual({ shopName: DEMO.shop.shopName, rounds: [] });
  });
});
