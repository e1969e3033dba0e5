import vm from 'node:vm';
import { installServices } from './installServices.ts';
import { jsonOnly } from './jsonOnly.ts';
import type { Job, JobResult, PlatformApi, Transport } from './protocolTypes.ts';
import { freshRealm, type Realm } from './realm.ts';

/** The add-on's code in a fresh global scope, with the platform's objects in it. */
export function loadBundle(
  script: vm.Script,
  api: PlatformApi,
  transport: Transport,
  now?: number,
): LoadedBundle {
  const realm = freshRealm(now);
  const withObjects = installServices(realm, api, transport);
  script.runInContext(realm.context);
  return { ...realm, withObjects };
}

interface LoadedBundle extends Realm {
  /** Builds a value of JSON with the platform's objects in it. */
  readonly withObjects: (json: string) => unknown;
}

/** Runs one call of a menu item, page or trigger in a fresh scope. */
export function runJob(realm: LoadedBundle, job: Job): JobResult {
  try {
    const run: unknown = vm.runInContext(job.name, realm.context);
    if (typeof run !== 'function') throw new Error(`${job.name} is not a function of the add-on`);
    const json = JSON.stringify(job.args);
    const args: unknown = job.isEvent ? realm.withObjects(json) : realm.parse(json);
    const value: unknown = Reflect.apply(run, undefined, Array.isArray(args) ? args : []);
    return { kind: 'value', value: jsonOnly(value, `the result of ${job.name}`) };
  } catch (error) {
    return { kind: 'failure', message: messageOf(error) };
  }
}

/** The message of a thrown value, also of one made in another context. */
export function messageOf(error: unknown): string {
  if (typeof error === 'object' && error !== null && 'message' in error)
    return String(error.message);
  return String(error);
}
