import vm from 'node:vm';
import type { AddOn } from './addOn.ts';
import { methodOf, PLATFORM_API, replyOf, requireAllowed } from './platform/platformApi.ts';
import type { Session } from './platform/session.ts';
import type { CallSite, FunctionOutcome, FunctionRunner } from './sheetFunctions.ts';
import type { Transport } from './standIn/protocolTypes.ts';
import { isDateOfAnyRealm, type Realm } from './standIn/realm.ts';
import { loadBundle, messageOf } from './standIn/runJob.ts';

export interface FunctionCalls {
  readonly run: FunctionRunner;
  /** Call before each calculation: fresh globals, fresh messages, results of the last but one calculation forgotten. */
  begin(): void;
  /** Why the function in a cell failed. */
  message(site: CallSite): string | undefined;
}

/**
 * Runs the add-on's sheet functions while the engine calculates.
 *
 * As on the platform a result is kept by function and arguments, and a function may read the spreadsheet but not change it.
 */
export function functionCalls(
  addOn: AddOn,
  session: () => Session,
  now?: () => Date,
): FunctionCalls {
  const script = new vm.Script(addOn.code, { filename: 'Code.js' });
  const messages = new Map<string, string>();
  let [kept, earlier] = [new Map<string, FunctionOutcome>(), new Map<string, FunctionOutcome>()];
  let realm: Realm | undefined;

  const transport: Transport = (call) => {
    try {
      const method = methodOf(call);
      if (!method) throw new Error(`${call.object}.${call.method} does not exist`);
      requireAllowed(session(), call, method);
      return replyOf(method.run(session(), call.ref, call.args));
    } catch (error) {
      return { kind: 'error', message: messageOf(error) };
    }
  };

  function evaluate(name: string, args: string): FunctionOutcome {
    try {
      realm ??= loadBundle(script, PLATFORM_API, transport, now?.().getTime());
      const run: unknown = vm.runInContext(name, realm.context);
      if (typeof run !== 'function') throw new Error(`${name} is not a function of the add-on`);
      const given: unknown = realm.revive(args, (mark) => mark);
      const value: unknown = Reflect.apply(run, undefined, Array.isArray(given) ? given : []);
      return { kind: 'value', value: plain(value) };
    } catch (error) {
      return { kind: 'failure', message: messageOf(error) };
    }
  }

  return {
    begin: () => {
      realm = undefined;
      messages.clear();
      [earlier, kept] = [kept, new Map()];
    },
    message: (site) => messages.get(keyOf(site)),
    run: (name, given, site) => {
      const key = `${name} ${given}`;
      const outcome = kept.get(key) ?? earlier.get(key) ?? evaluate(name, given);
      kept.set(key, outcome);
      if (outcome.kind === 'failure') messages.set(keyOf(site), outcome.message);
      else messages.delete(keyOf(site));
      return outcome;
    },
  };
}

function keyOf(site: CallSite): string {
  return `${site.sheet} ${site.row} ${site.column}`;
}

/** A result out of the add-on's context; dates become marks. */
function plain(value: unknown): unknown {
  if (isDateOfAnyRealm(value)) return { $date: value.getTime() };
  if (Array.isArray(value)) return value.map(plain);
  return typeof value === 'object' && value !== null ? String(value) : value;
}
