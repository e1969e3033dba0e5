import { describe, expect, test } from 'vitest';
import {
  type QualityAsked,
  qualitySummary,
} from '../../../shared/outcomes/quality/qualitySummary.ts';
import { trendText, weekTexts, worstTexts } from '../../../shared/outcomes/quality/weekTexts.ts';
import { pictureTitle } from '../../../shared/pictures/pictureText.ts';
import { logBook } from '../../log/logBook.ts';
import { HOSTILE } from '../../paper/hostile.ts';

type LogRow = Readonly<Record<string, string | number>>;

/** A Tuesday. */
const DAY = '2026-12-01';

const SOUND = {
  ...{ run: 'R-1', order: '1', mold: 'Stick', pattern: 'Line' },
  ...{ poured: 10, good: 9, loggedAt: '2026-11-30 09:00' },
};

const PATTERNS: readonly LogRow[] = [
  { pattern: 'Line', version: 1, layer: 1 },
  { pattern: 'Vein', version: 1, layer: 1 },
  { pattern: 'Vein', version: 2, layer: 1 },
  { pattern: 'Vein', version: 2, layer: 2 },
];

function quality(rows: readonly LogRow[], asked: Partial<QualityAsked> = {}) {
  const book = logBook({
    pourLog: rows.map((row) => ({ ...SOUND, ...row })),
    patterns: PATTERNS,
  });
  return qualitySummary(Object.freeze(book), DAY, Object.freeze({ points: 'rounds', ...asked }));
}

describe('an empty log', () => {
  test('has no names, no worst and no picture, and says what each picture needs', () => {
    expect(quality([])).toEqual({
      ...{ shopName: '', system: 'US', day: DAY, asked: { points: 'rounds' } },
      ...{ molds: [], patterns: [], rounds: 0, worst: [], pictures: [] },
      weeks: [{ from: '2026-11-30', rounds: 0, poured: 0, good: 0 }],
      missing: [
        'The control chart of bad pieces needs two rounds.',
        'No bad piece is logged: no defects to rank.',
        'Yield against the mold top needs two rounds with a mold-top reading.',
        'The weight chart needs two weighed pieces of one mold.',
      ],
    });
    expect(weekTexts(quality([])).key).toBe('Nothing logged');
  });
});

describe('one round', () => {
  test('has a yield and its defects, no control chart, no trend and no worst', () => {
    const shown = quality([{ dimple: 1 }], { points: 'runs' });
    expect(shown).toMatchObject({ rounds: 1, worst: [], molds: ['Stick'], patterns: ['Line'] });
    expect(shown).not.toHaveProperty('trend');
    expect(shown.pictures.map(({ kind }) => kind)).toEqual(['defect-pareto']);
    expect(shown.missing[0]).toBe('The control chart of bad pieces needs two runs.');
    // Wilson interval of 9 of 10 at 95 %: 0.596 to 0.982
    expect(weekTexts(shown)).toEqual({
      key: '90 % good',
      text: '9 of 10 pieces in 1 round; the yield lies between 60 % and 98 %.',
    });
    expect(trendText(shown)).toBe(
      'A trend needs three weeks with rounds, with good and bad pieces among them.',
    );
  });
});

describe('a log of several molds', () => {
  const ROWS: readonly LogRow[] = [
    { poured: 60, good: 59, loggedAt: '2026-11-16 09:00', moldTop: 200, weights: '10, 11 g' },
    { mold: 'Worm', pattern: 'Vein', poured: 40, good: 30, dimple: 10, moldTop: 160 },
    { poured: 60, good: 60, loggedAt: '2026-11-23 09:00', moldTop: 205, weights: '12 g' },
  ];

  test('weeks, counts and pictures are of what is asked for; names and the worst are of all', () => {
    const shown = quality(ROWS, { mold: 'stick' });
    expect(shown).toMatchObject({
      rounds: 2,
      molds: ['Stick', 'Worm'],
      patterns: ['Line', 'Vein'],
    });
    expect(shown.weeks.map(({ good }) => good)).toEqual([59, 60, 0]);
    expect(shown.pictures.map((one) => [one.kind, pictureTitle(one)])).toEqual([
      ['share-chart', 'Bad pieces, stick'],
      ['defect-pareto', 'What was wrong, stick'],
      ['yield-curve', 'Yield against mold top, stick'],
      ['weight-chart', 'Piece weight, Stick'],
    ]);
    expect(shown.worst).toEqual(quality(ROWS).worst);
    expect(shown.worst[0]).toMatchObject({ name: 'Worm', good: 30, others: 119 / 120 });
  });

  test('mold and pattern together name both, and without a round in common every picture is missing', () => {
    const both = quality([...ROWS, ...ROWS], { mold: 'Worm', pattern: 'Vein' });
    expect(both.pictures.map(pictureTitle)).toContain('Bad pieces, Worm, Vein');
    const none = quality(ROWS, { mold: 'Stick', pattern: 'Vein' });
    expect(none).toMatchObject({ rounds: 0, pictures: [] });
    expect(none.missing).toHaveLength(4);
  });

  test('a corrected row counts nowhere: not in weeks, counts, names or pictures', () => {
    const wrong = { entry: 'e1', run: 'R-2', mold: 'Wrom', good: 0, coldCrack: 10 };
    const right = { ...wrong, entry: 'e2', corrects: 'e1', mold: 'Worm', good: 9, coldCrack: 1 };
    const shown = quality([{}, wrong, right]);
    expect(shown).toMatchObject({ rounds: 2, molds: ['Stick', 'Worm'] });
    expect(shown.weeks).toMatchObject([{ rounds: 2, poured: 20, good: 18 }]);
    expect(shown.pictures).toMatchObject([
      { kind: 'share-chart', center: 0.1 },
      { kind: 'defect-pareto', bars: [{ name: 'Cold crack', count: 1 }, { count: 1 }] },
    ]);
  });

  test('layers are those of the version poured, of the newest where the row names none', () => {
    const vein = { pattern: 'Vein', poured: 100, good: 50 };
    const named = (rows: readonly LogRow[]) =>
      quality([{ poured: 100, good: 99 }, ...rows]).worst.map(({ kind, name }) => [kind, name]);
    expect(named([vein])).toContainEqual(['layers', '2 layers']);
    expect(named([{ ...vein, version: 2 }])).toContainEqual(['layers', '2 layers']);
    // its first version has one layer, as the other pattern has
    expect(named([{ ...vein, version: 1 }])).toEqual([['pattern', 'Vein']]);
  });

  test('the worst are of the last eight weeks', () => {
    const old = ROWS.map((row) => ({ ...row, loggedAt: '2026-10-11 09:00' }));
    expect(quality(old).worst).toEqual([]);
    expect(quality(old).pictures).toHaveLength(4);
  });

  test('where one mold has two weighed pieces there is a weight chart, whatever was weighed last', () => {
    const { pictures } = quality([...ROWS, { mold: 'Worm', pieceWeight: 0.4 }]);
    expect(pictures.map(pictureTitle)).toContain('Piece weight, Stick');
  });
});

test('words of the worst and of a week before this one', () => {
  const rows = [
    { poured: 60, good: 59, loggedAt: '2026-11-23' },
    { mold: 'Worm', poured: 40, good: 30, loggedAt: '2026-11-23' },
  ];
  const { worst, weeks } = quality(rows);
  expect(worst.map(worstTexts)).toEqual([
    {
      name: 'Mold Worm',
      // Wilson interval of 30 of 40 at 95 %: 0.598 to 0.858
      evidence: '30 of 40 pieces good in 1 round, 75 % (60 % to 86 %); all others 98 %',
    },
  ]);
  expect(weekTexts({ weeks })).toEqual({
    key: 'Nothing logged this week',
    // 89 of 100: 0.814 to 0.937
    text: 'Week of 2026-11-23: 89 % good, 89 of 100 pieces in 2 rounds; the yield lies between 81 % and 94 %.',
  });
});

test.each(HOSTILE)('the name %j stands as it is in names and titles', (name) => {
  const rows = [{ mold: name }, { mold: name, good: 5 }];
  const shown = quality(rows, { mold: name });
  expect(shown).toMatchObject({ rounds: 2, molds: [name.trim()] });
  expect(shown.pictures.map(pictureTitle)).toContain(`Bad pieces, ${name}`);
});
