import * as z from 'zod/mini';
import { describe } from '../../shared/errors/describe.ts';
import type { InputFacts, Rule } from '../../shared/errors/InputError.ts';
import type { Problem, Refused } from '../../shared/verbs/verbs.ts';

/**
 * What a page sent, checked for its shape. Schemas are made when a verb runs, not at load: every sheet-function call
 * loads the whole script.
 */
export function readPayload<Value>(
  schema: z.ZodMiniType<Value>,
  payload: unknown,
): { readonly kind: 'read'; readonly value: Value } | Refused {
  z.config({ jitless: true });
  const read = schema.safeParse(payload ?? {}, { reportInput: true });
  if (read.success) return { kind: 'read', value: read.data };
  return { kind: 'refused', problems: read.error.issues.map(problemOf) };
}

/** An order number, run id or name as it may come from a page. */
export function shortText() {
  return z.string().check(z.minLength(1), z.maxLength(60));
}

/** A clock time as typed; `""` takes the order row's own. */
export function clockText() {
  return z.optional(z.string().check(z.maxLength(20)));
}

/** The one place where the words of the schema library become ours. */
function problemOf(issue: z.core.$ZodIssue): Problem {
  if (issue.code === 'unrecognized_keys')
    return { field: issue.keys[0] ?? '', text: describe(unknownFields(issue.keys)) };
  const field = String(issue.path[issue.path.length - 1] ?? '');
  const name = field === '' ? 'what the page sent' : field.replace(/([A-Z])/g, ' $1').toLowerCase();
  return { field, text: describe({ field: name, rule: ruleOf(issue), value: plain(issue.input) }) };
}

function unknownFields(keys: readonly string[]): InputFacts {
  const rule = { kind: 'form', wanted: 'free of fields that this verb does not know' } as const;
  return { field: 'what the page sent', rule, value: keys.join(', ') };
}

function plain(input: unknown): unknown {
  return typeof input === 'object' && input !== null ? 'a list or an object' : input;
}

function ruleOf(issue: z.core.$ZodIssue): Rule {
  switch (issue.code) {
    case 'too_big':
      return { kind: 'form', wanted: `at most ${issue.maximum} characters long` };
    case 'too_small':
      return { kind: 'given' };
    case 'invalid_type':
      return issue.input === undefined
        ? { kind: 'given' }
        : { kind: 'form', wanted: `of the kind ${issue.expected}` };
    default:
      return { kind: 'form', wanted: 'of another form' };
  }
}
