import { expect, test } from 'vitest';
import { anyHours, weekHours } from '../../../shared/day/planning/weekHours.ts';
import { errorText } from '../../heat/errorText.ts';
import { DAY, HOUR } from './demoDay.ts';

const SHIFT = {
  from: 8 * HOUR,
  to: 16 * HOUR,
  breaks: [
    { from: 8 * HOUR, to: 9 * HOUR },
    { from: 12 * HOUR, to: 13 * HOUR },
  ],
};

test('a shift a day without its breaks; a closed day has none, the week begins again', () => {
  expect(weekHours([SHIFT, undefined], 3)).toEqual([
    { from: 9 * HOUR, to: 12 * HOUR },
    { from: 13 * HOUR, to: 16 * HOUR },
    { from: 2 * DAY + 9 * HOUR, to: 2 * DAY + 12 * HOUR },
    { from: 2 * DAY + 13 * HOUR, to: 2 * DAY + 16 * HOUR },
  ]);
});

test('a break that reaches the end of the shift leaves nothing behind it', () => {
  const breaks = [{ from: 12 * HOUR, to: 16 * HOUR }];
  expect(weekHours([{ ...SHIFT, breaks }], 1)).toEqual([{ from: 8 * HOUR, to: 12 * HOUR }]);
});

test.each([
  { name: 'outside', breaks: [{ from: 7 * HOUR, to: 9 * HOUR }], got: '25200 s and 32400 s' },
  {
    name: 'past the end',
    breaks: [{ from: 15 * HOUR, to: 17 * HOUR }],
    got: '54000 s and 61200 s',
  },
])('a break $name is refused', ({ breaks, got }) => {
  expect(errorText(() => weekHours([{ ...SHIFT, breaks }], 1))).toBe(
    `breaks must be in order and inside the shift, got ${got}`,
  );
});

test('someone is there: hours that meet or overlap become one', () => {
  const [one, other, third] = [
    { from: 0, to: 4 },
    { from: 2, to: 3 },
    { from: 4, to: 6 },
  ];
  expect(anyHours([[one], [other, third], [{ from: 8, to: 9 }]])).toEqual([
    { from: 0, to: 6 },
    { from: 8, to: 9 },
  ]);
});
