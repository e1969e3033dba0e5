/** Something to mend before a command can do its work. */
export interface Problem {
  /** The form's field; `""` when it belongs to none. */
  readonly field: string;
  /** One sentence, as `describe` words it or in full. */
  readonly text: string;
}

/** A command's answer when it cannot do its work. */
export interface Refused {
  readonly kind: 'refused';
  readonly problems: readonly Problem[];
}

/** One problem as an answer. */
export function refuse(field: string, text: string): Refused {
  return { kind: 'refused', problems: [{ field, text }] };
}
