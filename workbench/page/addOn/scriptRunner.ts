import type { CallResult } from '../../host/Host.ts';
import { plainCopy } from '../grid/plainCopy.ts';

type Handler = (value: unknown, about: unknown) => void;

interface Handlers {
  readonly success?: Handler;
  readonly failure?: Handler;
  readonly about?: unknown;
}

/** `google.script.run`: handlers give a new runner, any other public name calls the add-on. */
export type ScriptRunner = Readonly<Record<string, (...args: readonly unknown[]) => unknown>>;

/** Calls the platform lets a page have on their way at the same time; further ones wait. */
const AT_A_TIME = 10;

/** @param call - carries one call to the add-on */
export function scriptRunner(
  call: (name: string, args: readonly unknown[]) => Promise<CallResult>,
): ScriptRunner {
  const waiting: (() => void)[] = [];
  let running = 0;

  function next() {
    if (running >= AT_A_TIME) return;
    waiting.shift()?.();
  }

  function start(name: string, args: readonly unknown[], handlers: Handlers) {
    const copies = args.map((arg, index) =>
      arg === undefined ? null : plainCopy(arg, String(index)),
    );
    waiting.push(() => {
      running += 1;
      void call(name, copies).then((result) => {
        running -= 1;
        next();
        answer(name, result, handlers);
      });
    });
    next();
  }

  return runnerWith({}, start);
}

function runnerWith(
  handlers: Handlers,
  start: (name: string, args: readonly unknown[], handlers: Handlers) => void,
): ScriptRunner {
  const more = (part: Handlers) => runnerWith({ ...handlers, ...part }, start);
  const own: Readonly<Record<string, (arg: unknown) => ScriptRunner>> = {
    withSuccessHandler: (success) => more({ success: handler(success) }),
    withFailureHandler: (failure) => more({ failure: handler(failure) }),
    withUserObject: (about) => more({ about }),
  };
  return new Proxy<ScriptRunner>(
    {},
    {
      get: (_target, name) => {
        if (typeof name !== 'string' || name.endsWith('_')) return undefined;
        return own[name] ?? ((...args: readonly unknown[]) => start(name, args, handlers));
      },
    },
  );
}

function handler(value: unknown): Handler {
  if (typeof value !== 'function') throw new TypeError('a handler must be a function');
  return (result, about) => void value(result, about);
}

function answer(name: string, result: CallResult, handlers: Handlers) {
  if (result.kind === 'value') {
    handlers.success?.(result.value, handlers.about);
    return;
  }
  const error = new Error(result.message);
  if (!handlers.failure) throw new Error(`${name}: ${result.message}`, { cause: error });
  handlers.failure(error, handlers.about);
}
