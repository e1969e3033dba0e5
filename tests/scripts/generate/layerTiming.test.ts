import { describe, expect, test } from 'vitest';
import { layerTiming } from '../../../scripts/generate/layerTiming.ts';
import {
  closedFormError,
  errorText,
  largest,
  timeText,
} from '../../../scripts/generate/timeText.ts';

function seconds(solved: number, closed: number) {
  return {
    solved: { kind: 'seconds', seconds: solved },
    closed: { kind: 'seconds', seconds: closed },
  };
}

const OPEN = { kind: 'stays open' };

describe('words of a comparison', () => {
  test('late is +, early is −, above 15 % is bold, next to nothing has no sign', () => {
    expect(errorText(seconds(100, 112))).toBe('+12.0 %');
    expect(errorText(seconds(100, 97.5))).toBe('−2.5 %');
    expect(errorText(seconds(100, 84))).toBe('**−16.0 %**');
    expect(errorText(seconds(100, 99.96))).toBe('0.0 %');
    expect(timeText({ kind: 'seconds', seconds: 41.4 })).toBe('41');
  });

  test('one verdict is a dash, another one is named in bold', () => {
    expect(errorText({ solved: OPEN, closed: OPEN })).toBe('–');
    const differing = { solved: { kind: 'seconds', seconds: 411 }, closed: OPEN };
    expect(errorText(differing)).toBe('**stays open**');
    expect(closedFormError(differing)).toBe(undefined);
    expect(timeText(OPEN)).toBe('stays open');
  });

  test('the largest error is the largest in size', () => {
    expect(largest([seconds(100, 104), seconds(100, 91), seconds(100, 100)])).toBe('−9.0 %');
  });
});

describe('docs/layer-timing.md', () => {
  const text = layerTiming();
  const errors = [...text.matchAll(/^- (.*): largest error ([−+][\d.]+) %/gm)].map(
    ([, name, figure]) => ({ name, figure: Number(figure?.replace('−', '-')) }),
  );

  test('has a row for every mold and depth in both tables', () => {
    expect(text.match(/^\| \d+ \| \d+ \|/gm)?.length).toBe(2 * 6 * 4);
  });

  test('for one layer, series and solver are within 0.5 % of each other', () => {
    expect(errors.map(({ name }) => name)).toEqual([
      'Open time, series',
      'Open time, one term',
      'Latest next pour, series',
      'Open time, series',
      'Open time, one term',
      'Latest next pour, series',
    ]);
    expect(Math.abs(errors[0]?.figure ?? Number.NaN)).toBeLessThan(0.5);
    expect(Math.abs(errors[2]?.figure ?? Number.NaN)).toBeLessThan(0.5);
  });

  test('for a stack every closed form is off by more than 15 %, which its text says', () => {
    for (const { figure } of errors.slice(3)) expect(Math.abs(figure)).toBeGreaterThan(15);
    expect(text).toContain('Stacks are better planned with the solver.');
  });
});
