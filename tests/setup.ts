import * as fc from 'fast-check';
import { afterEach, beforeEach, expect, vi } from 'vitest';
import { toBeNear } from './toBeNear.ts';

expect.extend({ toBeNear });

// A law may pass over what it does not speak of, by fc.pre or by ending early, but not most of the time: then it tests next to
// nothing. The library counts the first, the plug-ins count runs of a law that end without an expectation.
fc.configureGlobal({ maxSkipsPerRun: 1 });
const runs = { all: 0, empty: 0, expectations: 0 };
fc.installGlobalPlugin(
  fc.beforeEach(() => {
    runs.expectations = expect.getState().assertionCalls;
  }),
);
fc.installGlobalPlugin(
  fc.afterEach(() => {
    runs.all += 1;
    if (expect.getState().assertionCalls === runs.expectations) runs.empty += 1;
  }),
);

beforeEach(() => {
  runs.all = 0;
  runs.empty = 0;
});

afterEach(() => {
  const { all, empty } = runs;
  expect(empty, `of ${all} runs of laws so many expected nothing`).toBeLessThanOrEqual(all / 2);
});

const methods = ['log', 'info', 'warn', 'error', 'debug'] as const;
const spies = new Map<string, ReturnType<typeof vi.spyOn>>();

beforeEach(() => {
  for (const method of methods) spies.set(method, vi.spyOn(console, method));
});

/** Engine and edges report by results and errors; a line on the console is a defect. */
afterEach(() => {
  for (const [method, spy] of spies) {
    const calls = spy.mock.calls.map((call: unknown[]) => call.map(String).join(' '));
    spy.mockRestore();
    expect(calls, `console.${method} was called`).toEqual([]);
  }
});
