import * as z from 'zod/mini';
import { describe } from '../../shared/errors/describe.ts';
import type { Rule } from '../../shared/errors/InputError.ts';
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
  const read = schema.safeParse(payload ?? {});
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
  const field = String(issue.path[issue.path.length - 1] ?? '');
  const name = field === '' ? 'what the page sent' : field.replace(/([A-Z])/g, ' $1').toLowerCase();
  return { field, text: describe({ field: name, rule: ruleOf(issue), value: issue.input }) };
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
    case 'unrecognized_keys':
      return { kind: 'form', wanted: `free of ${issue.keys.join(', ')}` };
    default:
      return { kind: 'form', wanted: 'of another form' };
  }
}
