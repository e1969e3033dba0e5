import {
  isObjectMark,
  isSelfMark,
  type ObjectMark,
  type PlatformApi,
  type ServiceReply,
  type Transport,
} from './protocolTypes.ts';
import { isDateOfAnyRealm, type Realm } from './realm.ts';

interface Handle {
  readonly object: string;
  ref: unknown;
}

/**
 * Puts the platform's global objects into a context. Each name that is not in the API throws when touched.
 * @returns what makes the platform's objects of marks in JSON, as the platform does for the event of a trigger
 */
export function installServices(
  realm: Realm,
  api: PlatformApi,
  transport: Transport,
): (json: string) => unknown {
  const handles = new WeakMap<object, Handle>();

  function make(object: string, ref: unknown): object {
    const handle: Handle = { object, ref };
    const proxy: object = new Proxy(Object.create(null), {
      get: (_target, key) => member(proxy, handle, key),
      set: (_target, key) => {
        throw realm.error(`${object}.${String(key)} cannot be set`);
      },
      has: (_target, key) => api.methods[object]?.includes(String(key)) ?? false,
    });
    handles.set(proxy, handle);
    return proxy;
  }

  function member(proxy: object, handle: Handle, key: string | symbol): unknown {
    // Asked by the language itself: printing, awaiting, comparing.
    if (typeof key === 'symbol' || key === 'then' || key === 'toJSON') return undefined;
    if (key === 'toString') return () => handle.object;
    const constants = api.constants[handle.object]?.[key];
    if (constants) return constantsOf(realm, `${handle.object}.${key}`, constants);
    if (!api.methods[handle.object]?.includes(key)) {
      throw realm.error(`${handle.object}.${key} is not part of the workbench's stand-in`);
    }
    return (...args: unknown[]) => call(proxy, handle, key, args);
  }

  function call(proxy: object, handle: Handle, method: string, args: readonly unknown[]): unknown {
    const reply: ServiceReply = transport({
      object: handle.object,
      ref: encode(handle.ref, handles),
      method,
      args: args.map((arg) => encode(arg, handles)),
    });
    if (reply.kind === 'error') throw realm.error(reply.message);
    if (reply.self !== undefined) handle.ref = reply.self;
    if (reply.value === undefined) return undefined;
    return realm.revive(JSON.stringify(reply.value), (mark) =>
      isSelfMark(mark) ? proxy : made(mark),
    );
  }

  function made(mark: unknown): unknown {
    return isObjectMark(mark) ? make(mark.$object, mark.ref) : mark;
  }

  for (const [name, object] of Object.entries(api.globals)) {
    Object.defineProperty(realm.context, name, { value: make(object, null), enumerable: false });
  }
  return (json) => realm.revive(json, made);
}

function constantsOf(realm: Realm, name: string, values: readonly string[]): object {
  return new Proxy(Object.create(null), {
    get: (_target, key) => {
      if (typeof key === 'symbol') return undefined;
      if (!values.includes(key)) throw realm.error(`${name}.${key} does not exist`);
      return key;
    },
  });
}

/** An argument as plain data: dates and platform objects become marks. */
function encode(value: unknown, handles: WeakMap<object, Handle>): unknown {
  // A number that is no number shows as an error in a cell.
  if (typeof value === 'number') return Number.isFinite(value) ? value : '#NUM!';
  if (typeof value === 'function') throw new Error('a function cannot be passed to the platform');
  if (typeof value !== 'object' || value === null) return value ?? null;
  const handle = handles.get(value);
  // What it points to may hold platform objects too, as a rule holds the range of its list.
  if (handle) {
    return { $object: handle.object, ref: encode(handle.ref, handles) } satisfies ObjectMark;
  }
  if (isDateOfAnyRealm(value)) return { $date: value.getTime() };
  if (Array.isArray(value)) return value.map((item) => encode(item, handles));
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, encode(item, handles)] as const),
  );
}
