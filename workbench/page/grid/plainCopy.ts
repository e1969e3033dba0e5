/**
 * The copy of a value that crosses to the add-on: numbers, text, booleans, null, and plain objects and arrays of them.
 *
 * An undefined entry of an array becomes null, an undefined property is dropped, as on the platform.
 *
 * @param path - where the value stands, for the message
 * @throws TypeError for anything else: dates, functions, elements, circular data, numbers that are not finite
 */
export function plainCopy(value: unknown, path: string, above: readonly object[] = []): unknown {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (typeof value !== 'object' || above.includes(value)) throw refusal(path);
  const inside = [...above, value];
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return items.map((item, index) =>
      item === undefined ? null : plainCopy(item, `${path}.${index}`, inside),
    );
  }
  if (Object.prototype.toString.call(value) !== '[object Object]') throw refusal(path);
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  return Object.fromEntries(
    entries.map(([name, item]) => [name, plainCopy(item, `${path}.${name}`, inside)]),
  );
}

function refusal(path: string): TypeError {
  return new TypeError(`Failed due to illegal value in property: ${path}`);
}
