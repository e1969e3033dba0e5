import { expect, test } from 'vitest';
import { tickedBy } from '../../../shared/day/checklist/tickedBy.ts';

test.each([
  { email: '', people: ['Ada'], who: '' },
  { email: 'ada@example.com', people: ['Ada', 'Ben'], who: 'Ada' },
  { email: 'ada.k@example.com', people: ['Ada K', 'Ben'], who: 'Ada K' },
  { email: 'ada@example.com', people: ['Ada K', 'Ben'], who: 'Ada K' },
  { email: 'ada@example.com', people: ['Ada K', 'Ada M'], who: '' },
  { email: 'ada@example.com', people: ['Ada', 'Ada'], who: 'Ada' },
  { email: 'office@example.com', people: ['Ada', 'Ben'], who: '' },
])('a tick of $email among $people is by "$who"', ({ email, people, who }) => {
  expect(tickedBy(email, people)).toBe(who);
});
