import { describe, expect, test } from 'vitest';
import type { CallResult } from '../../../../workbench/host/Host.ts';
import { scriptRunner } from '../../../../workbench/page/addOn/scriptRunner.ts';

/** A runner whose calls the test answers. */
function runnerOf() {
  const calls: { name: string; args: readonly unknown[]; answer: (result: CallResult) => void }[] =
    [];
  const run = scriptRunner(
    (name, args) => new Promise((answer) => calls.push({ name, args, answer })),
  );
  return { run, calls };
}

/** The runner is typed as the platform's open list of functions. */
type Runner = Record<string, (...args: unknown[]) => Runner>;

const asRunner = (run: unknown) => run as Runner;

describe('scriptRunner', () => {
  test('gives the value and the user object to the success handler', async () => {
    const { run, calls } = runnerOf();
    const got: unknown[] = [];
    const about = { button: 1 };
    asRunner(run)
      ['withSuccessHandler']?.((value: unknown, user: unknown) => got.push(value, user))
      ['withUserObject']?.(about)
      ['planOrder']?.('1002');
    calls[0]?.answer({ kind: 'value', value: { pieces: 130 } });
    await Promise.resolve();
    expect(calls[0]).toMatchObject({ name: 'planOrder', args: ['1002'] });
    expect(got).toEqual([{ pieces: 130 }, about]);
    expect(got[1]).toBe(about);
  });

  test('gives an Error with the sentence to the failure handler', async () => {
    const { run, calls } = runnerOf();
    const got: unknown[] = [];
    asRunner(run)
      ['withFailureHandler']?.((error: unknown) => got.push(error))
      ['planOrder']?.();
    calls[0]?.answer({
      kind: 'failure',
      message: 'quantity must be greater than 0 pieces, got 0 pieces',
    });
    await Promise.resolve();
    expect(got).toEqual([new Error('quantity must be greater than 0 pieces, got 0 pieces')]);
  });

  test('each handler gives a new runner and leaves the old one as it was', async () => {
    const { run, calls } = runnerOf();
    const got: string[] = [];
    const first = asRunner(run)['withSuccessHandler']?.(() => got.push('first'));
    first?.['withSuccessHandler']?.(() => got.push('second'));
    first?.['planOrder']?.();
    calls[0]?.answer({ kind: 'value', value: null });
    await Promise.resolve();
    expect(got).toEqual(['first']);
  });

  test('lets ten calls go and holds the others until one is answered', async () => {
    const { run, calls } = runnerOf();
    for (let call = 0; call < 12; call += 1) asRunner(run)['planOrder']?.(call);
    expect(calls).toHaveLength(10);
    calls[3]?.answer({ kind: 'value', value: null });
    await Promise.resolve();
    expect(calls).toHaveLength(11);
    expect(calls[10]?.args).toEqual([10]);
  });

  test('names that end in an underscore do not exist', () => {
    expect(asRunner(runnerOf().run)['secret_']).toBeUndefined();
  });

  test('a date is refused at once and nothing is sent', () => {
    const { run, calls } = runnerOf();
    expect(() => asRunner(run)['planOrder']?.(new Date(0))).toThrow(
      new TypeError('Failed due to illegal value in property: 0'),
    );
    expect(calls).toEqual([]);
  });
});
