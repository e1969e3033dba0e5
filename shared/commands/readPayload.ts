import { describe } from '../errors/describe.ts';
import type { Rule } from '../errors/InputError.ts';
import type { Problem, Refused } from '../errors/refuse.ts';

/** A text that a page may send. */
export interface TextField {
  /** Most characters. */
  readonly longest: number;
  readonly needed: boolean;
}

/** Texts by name, sent as one object: of these names, or of any name where `any` is declared. */
type TextsField =
  | { readonly texts: Readonly<Record<string, TextField>> }
  | { readonly any: TextField };

/** What a command takes, by name. */
export type PayloadFields<Name extends string = string> = Readonly<
  Record<Name, TextField | TextsField>
>;

/** An order number, run id or token. */
export const NEEDED_TEXT: TextField = { longest: 60, needed: true };
export const OPTIONAL_TEXT: TextField = { longest: 60, needed: false };

type PayloadRead = { readonly kind: 'read'; readonly value: object } | Refused;
type Sent = Readonly<Record<string, unknown>>;

/**
 * What a page sent, checked text by text; everything wrong is told at once. A name that no field has is refused.
 * A needed text is there afterwards, an optional one may not be, texts by name are an object, empty where none was sent.
 */
export function readPayload(fields: PayloadFields, payload: unknown): PayloadRead {
  const sent: Sent = isObject(payload) ? payload : {};
  const problems = problemsOf(fields, sent);
  if (problems.length > 0) return { kind: 'refused', problems };
  const groups = Object.keys(fields).filter((name) => !isText(fields[name]));
  return {
    kind: 'read',
    value: { ...Object.fromEntries(groups.map((name) => [name, {}])), ...sent },
  };
}

function problemsOf(fields: PayloadFields, sent: Sent): readonly Problem[] {
  return Object.keys({ ...fields, ...sent }).flatMap((name) => {
    const declared = Object.keys(fields).includes(name) ? fields[name] : undefined;
    if (declared === undefined || isText(declared)) return problemOf(name, sent[name], declared);
    const texts: Sent = isObject(sent[name]) ? sent[name] : {};
    return problemsOf('any' in declared ? anyNames(texts, declared.any) : declared.texts, texts);
  });
}

function anyNames(texts: Sent, field: TextField): PayloadFields {
  return Object.fromEntries(Object.keys(texts).map((name) => [name, field]));
}

function isText(field: TextField | TextsField | undefined): field is TextField {
  return field !== undefined && 'longest' in field;
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
  if (declared === undefined) return { kind: 'form', wanted: 'a field that this command knows' };
  if (text === undefined || text === null || text === '')
    return declared.needed ? { kind: 'given' } : undefined;
  if (typeof text !== 'string') return { kind: 'form', wanted: 'text' };
  const isLong = text.length > declared.longest;
  return isLong
    ? { kind: 'form', wanted: `at most ${declared.longest} characters long` }
    : undefined;
}

function isObject(value: unknown): value is Sent {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
