import { describe, expect, test } from 'vitest';
import { stateLine, type WindowState } from '../../../workbench/page/stateLine.ts';

const QUIET: WindowState = {
  calls: 0,
  waiting: 0,
  seen: 7,
  calculated: 7,
  saved: 7,
  keeps: 'file',
  connection: 'open',
};

describe('stateLine', () => {
  test.each<[string, Partial<WindowState>]>([
    ['Saved', {}],
    ['Saving…', { saved: 6 }],
    ['Kept in memory only', { keeps: 'memory', saved: 0 }],
    ['Calculating…', { calculated: 6, saved: 6 }],
    ['Calculating…', { waiting: 1 }],
    ['Add-on at work…', { calls: 1, waiting: 1 }],
    ['Running: Make run sheet…', { running: 'Make run sheet', calls: 1 }],
    ['The workbench was started again: open the address it printed.', { connection: 'gone' }],
    ['Connection lost: changes are not kept. Trying again…', { connection: 'lost', calls: 1 }],
  ])('says %s', (expected, part) => {
    expect(stateLine({ ...QUIET, ...part })).toBe(expected);
  });
});
