import * as v from 'valibot';
import { describe } from '../../shared/errors/describe.ts';
import type { InputFacts, Rule } from '../../shared/errors/InputError.ts';
import type { Problem, Refused } from '../../shared/verbs/verbs.ts';

/**
 * What a page sent, checked for its shape. Schemas are made when a verb runs, not at load: every sheet-function call
 * loads the whole script.
 */
export function readPayload<Value>(
  schema: v.GenericSchema<unknown, Value>,
  payload: unknown,
): { readonly kind: 'read'; readonly value: Value } | Refused {
  const read = v.safeParse(schema, payload ?? {});
  if (read.success) return { kind: 'read', value: read.output };
  return { kind: 'refused', problems: read.issues.map(problemOf) };
}

/** An order number, run id or name as it may come from a page. */
export function shortText() {
  return v.pipe(v.string(), v.minLength(1), v.maxLength(60));
}

/** A clock time as typed; `""` takes the order row's own. */
export function clockText() {
  return v.optional(v.pipe(v.string(), v.maxLength(20)));
}

/** The one place where the words of the schema library become ours. */
function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = issue.path ?? [];
  const field = String(path[path.length - 1]?.key ?? '');
  if (issue.expected === 'never') return { field, text: describe(unknownField(field)) };
  const name = field === '' ? 'what the page sent' : field.replace(/([A-Z])/g, ' $1').toLowerCase();
  return { field, text: describe({ field: name, rule: ruleOf(issue), value: plain(issue.input) }) };
}

function unknownField(field: string): InputFacts {
  const rule = { kind: 'form', wanted: 'free of fields that this verb does not know' } as const;
  return { field: 'what the page sent', rule, value: field };
}

function plain(input: unknown): unknown {
  return typeof input === 'object' && input !== null ? 'a list or an object' : input;
}

function ruleOf(issue: v.BaseIssue<unknown>): Rule {
  if (issue.type === 'max_length')
    return { kind: 'form', wanted: `at most ${String(issue.requirement)} characters long` };
  if (issue.type === 'min_length' || issue.input === undefined) return { kind: 'given' };
  return { kind: 'form', wanted: `of the kind ${String(issue.expected)}` };
}
