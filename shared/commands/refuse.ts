import type { Refused } from './verbs.ts';

/** One problem as an answer. */
export function refuse(field: string, text: string): Refused {
  return { kind: 'refused', problems: [{ field, text }] };
}
