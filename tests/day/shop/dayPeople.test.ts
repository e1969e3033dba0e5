import { describe, expect, test } from 'vitest';
import { dayPeople } from '../../../shared/day/shop/dayPeople.ts';
import { DAY, HOUR } from '../planning/demoDay.ts';
import { dayBook } from './dayBook.ts';

/** A Friday */
const FRIDAY = { firstDay: '2026-12-04', days: 4 };

describe('hours', () => {
  test('weekdays leave out the weekend, a break is cut out', () => {
    const { people, assumptions } = dayPeople(dayBook(), FRIDAY);
    expect(assumptions).toEqual([]);
    expect(people[0]).toEqual({
      name: 'Ada',
      skills: ['color', 'cook', 'pour', 'finish'],
      hours: [0, 3].flatMap((day) => [
        { from: day * DAY + 8 * HOUR, to: day * DAY + 12 * HOUR },
        { from: day * DAY + 12.5 * HOUR, to: day * DAY + 16 * HOUR },
      ]),
    });
    expect(people[1]?.skills).toEqual(['cook', 'pour', 'finish']);
  });

  test('lines of one name add up, whatever the case', () => {
    const people = [
      { person: 'Ada', days: 'Saturday', from: 480, to: 600, pours: 'no' },
      { person: 'ada ', days: 'every day', from: 540, to: 720, colors: 'no', finishes: 'no' },
    ] as const;
    expect(dayPeople(dayBook({ people }), { ...FRIDAY, days: 2 }).people).toEqual([
      {
        name: 'Ada',
        skills: ['color', 'cook', 'pour', 'finish'],
        hours: [
          { from: 9 * HOUR, to: 12 * HOUR },
          { from: DAY + 8 * HOUR, to: DAY + 12 * HOUR },
        ],
      },
    ]);
  });

  test('a day of the week is that day, from whichever day the plan begins', () => {
    const people = [{ person: 'Ada', days: 'Sunday', from: 0, to: 60 }] as const;
    const hours = dayPeople(dayBook({ people }), { ...FRIDAY, days: 9 }).people[0]?.hours;
    expect(hours).toEqual([2].map((day) => ({ from: day * DAY, to: day * DAY + HOUR })));
  });
});

test('nobody listed: one person who does everything, and it is said', () => {
  const { people, assumptions } = dayPeople(dayBook({ people: [] }), { ...FRIDAY, days: 1 });
  expect(people).toEqual([
    {
      name: 'Pourer',
      skills: ['color', 'cook', 'pour', 'finish'],
      hours: [
        { from: 8 * HOUR, to: 12 * HOUR },
        { from: 12.5 * HOUR, to: 16.5 * HOUR },
      ],
    },
  ]);
  expect(assumptions).toEqual([
    'People is empty: planned for one person who does everything, Monday to Friday, 8:00 to 16:30 with half an hour off at noon.',
  ]);
});

test.each([
  [{ from: 480, to: 960 }, 'person must be given'],
  [{ person: 'Ada', to: 960 }, 'from and to must be given'],
  [{ person: 'Ada', from: 960, to: 480 }, 'to must be later than from'],
  [
    { person: 'Ada', from: 480, to: 960, breakFrom: 720 },
    'break from and break to must be given both or not at all',
  ],
  [
    { person: 'Ada', from: 480, to: 960, breakFrom: 720, breakTo: 990 },
    'the break must lie within the hours',
  ],
  [
    { person: 'Ada', from: 480, to: 960, breakFrom: 470, breakTo: 500 },
    'the break must lie within the hours',
  ],
])('a line that cannot be right is left out and named: %o', (line, why) => {
  const other = { person: 'Ben', from: 480, to: 960 };
  const { people, assumptions } = dayPeople(dayBook({ people: [line, other] }), FRIDAY);
  expect(people.map(({ name }) => name)).toEqual(['Ben']);
  expect(assumptions).toEqual([`In People, row 2: ${why}; the line was left out.`]);
});
