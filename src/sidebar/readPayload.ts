import { describe } from '../../shared/errors/describe.ts';
import type { Rule } from '../../shared/errors/InputError.ts';
import type { Problem, Refused } from '../../shared/errors/refuse.ts';

/** A text that a page may send. */
interface TextField {
  /** Most characters. */
  readonly longest: number;
  readonly needed: boolean;
}

/** The texts that a verb takes, by name. */
type Fields<Name extends string> = Readonly<Record<Name, TextField>>;

/** An order number, run id or token. */
export const NEEDED_TEXT: TextField = { longest: 60, needed: true };
export const OPTIONAL_TEXT: TextField = { longest: 60, needed: false };

type PayloadRead<Value> = { readonly kind: 'read'; readonly value: Value } | Refused;

/**
 * What a page sent, checked text by text; everything wrong is told at once. A name that no field has is refused.
 * Types are asserted from the declared fields: a needed one is there, an optional one may not be.
 */
export function readPayload<Value extends object>(
  fields: Fields<keyof Value & string>,
  payload: unknown,
): PayloadRead<Value> {
  const sent: Readonly<Record<string, unknown>> = isObject(payload) ? payload : {};
  const names = Object.keys({ ...fields, ...sent });
  const problems = names.flatMap((name) => problemOf(name, sent[name], findField(fields, name)));
  if (problems.length > 0) return { kind: 'refused', problems };
  return { kind: 'read', value: sent as Value }; // every declared field was checked, and nothing else is there
}

function findField(fields: Fields<string>, name: string): TextField | undefined {
  return Object.keys(fields).includes(name) ? fields[name] : undefined;
}

function problemOf(
  name: string,
  text: unknown,
  declared: TextField | undefined,
): readonly Problem[] {
  const field = name.replace(/([A-Z])/g, ' $1').toLowerCase();
  const rule = brokenRule(text, declared);
  if (rule === undefined) return [];
  const value = isObject(text) || Array.isArray(text) ? 'a list or an object' : text;
  return [{ field: name, text: describe({ field, rule, value }) }];
}

function brokenRule(text: unknown, declared: TextField | undefined): Rule | undefined {
  if (declared === undefined) return { kind: 'form', wanted: 'a field that this verb knows' };
  if (text === undefined || text === null || text === '')
    return declared.needed ? { kind: 'given' } : undefined;
  if (typeof text !== 'string') return { kind: 'form', wanted: 'text' };
  const isLong = text.length > declared.longest;
  return isLong
    ? { kind: 'form', wanted: `at most ${declared.longest} characters long` }
    : undefined;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
