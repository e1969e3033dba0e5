import type { Diagnosis } from './diagnose.ts';

/** A likely cause of a whole round; phrases without full stop. */
export interface RunCause {
  readonly cause: string;
  readonly because: string;
  readonly cure: string;
  /** Defects that it makes here: `Cold crack (3)` */
  readonly explains: readonly string[];
}

/** The causes of all defects of a round together, each told once: what explains most bad pieces best comes first. */
export function runCauses(diagnoses: readonly Diagnosis[]): readonly RunCause[] {
  const found = new Map<string, { readonly told: RunCause; readonly worth: number }>();
  for (const diagnosis of diagnoses)
    for (const { cause, because, cure, worth } of diagnosis.causes) {
      const before = found.get(cause);
      found.set(cause, {
        told: {
          cause,
          because,
          cure,
          explains: [...(before?.told.explains ?? []), named(diagnosis)],
        },
        worth: (before?.worth ?? 0) + worth * Math.max(1, diagnosis.count),
      });
    }
  return [...found.values()].sort((one, other) => other.worth - one.worth).map(({ told }) => told);
}

/** A defect with its pieces; one that only a tear test tells of has none. */
export function named({ name, count }: Pick<Diagnosis, 'name' | 'count'>): string {
  return count === 0 ? name : `${name} (${count})`;
}
