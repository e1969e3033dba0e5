import * as fc from 'fast-check';
import { afterEach, beforeEach, expect, vi } from 'vitest';
import { toBeNear } from './toBeNear.ts';

expect.extend({ toBeNear });

// A law may pass over what it does not speak of, by fc.pre, but not most of the time: then it tests next to nothing.
fc.configureGlobal({ maxSkipsPerRun: 1 });

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
