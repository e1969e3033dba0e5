import vm from 'node:vm';

/** Makers that run inside an add-on's context, so that what they make passes `instanceof` there. */
export interface Realm {
  readonly context: vm.Context;
  /** Builds a value of JSON, in which dates and platform objects are marks; `make` is asked for each marked object. */
  readonly revive: (json: string, make: (mark: unknown) => unknown) => unknown;
  /** Builds a value of JSON alone: what pages pass, where a mark would be their own data. */
  readonly parse: (json: string) => unknown;
  readonly error: (message: string) => unknown;
}

// Loops instead of JSON.parse's own reviver, which is far slower on the tables that sheet functions are given.
const MAKERS = `(() => {
  function walk(value, make) {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) {
      for (let at = 0; at < value.length; at++) {
        if (typeof value[at] === 'object') value[at] = walk(value[at], make);
      }
      return value;
    }
    if (typeof value.$date === 'number') return new Date(value.$date);
    if ('$object' in value || '$self' in value) return make(value);
    for (const key of Object.keys(value)) value[key] = walk(value[key], make);
    return value;
  }
  return {
    revive: (json, make) => json.includes('{"$') ? walk(JSON.parse(json), make) : JSON.parse(json),
    parse: (json) => JSON.parse(json),
    error: (message) => new Error(message),
  };
})()`;

const makers = new vm.Script(MAKERS);

/** A fresh global scope that has ECMAScript and nothing else, as on the platform. */
export function freshRealm(now?: number): Realm {
  const context = vm.createContext({});
  // The script above returns exactly these makers.
  const made = makers.runInContext(context) as Omit<Realm, 'context'>;
  // Node adds these to every context; the platform has neither.
  vm.runInContext('delete globalThis.WebAssembly; delete globalThis.SharedArrayBuffer;', context);
  if (now !== undefined) fixClock(context, now);
  return { context, ...made };
}

/** The clock of repeatable tests: `new Date()` and `Date.now()` show one instant. */
function fixClock(context: vm.Context, now: number): void {
  vm.runInContext(
    `{
      const Real = Date;
      globalThis.Date = new Proxy(Real, {
        construct: (target, args, self) => Reflect.construct(target, args.length ? args : [${now}], self),
        apply: () => new Real(${now}).toString(),
        get: (target, key) => (key === 'now' ? () => ${now} : Reflect.get(target, key)),
      });
    }`,
    context,
  );
}

export function isDateOfAnyRealm(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === '[object Date]';
}
