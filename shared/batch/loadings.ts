import { requireNumber } from '../errors/requireNumber.ts';

/** Something stirred into the base. */
export interface Additive {
  /** As in Materials; says in messages which one */
  readonly name: string;
  /** In the cup [kg], >= 0 */
  readonly mass: number;
  /** Most of it that still pours and bonds, over the base's mass, > 0; left out, no limit is known */
  readonly limit?: number;
}

type Loading = {
  readonly name: string;
  /** Mass over the base's mass */
  readonly loading: number;
} & (
  | { readonly verdict: 'within limit' | 'over limit'; readonly limit: number }
  | { readonly verdict: 'no limit known' }
);

export interface Loadings {
  /** All additives over the base's mass */
  readonly total: number;
  /** One for each name, in the order first met */
  readonly each: readonly Loading[];
}

const NO_LIMIT = Number.POSITIVE_INFINITY;

/** A dose made to the limit may miss it by the rounding of its own arithmetic. */
const TIE = 1e-9;

/**
 * How much of each additive a cup carries, over the mass of its base (not of the mixture: 2 % of the base is 1.96 % of both).
 * Doses of one name are added up; the lowest limit given for a name holds.
 * @param baseMass in the cup [kg], > 0
 * @throws InputError on a figure out of range
 */
export function loadings(baseMass: number, additives: readonly Additive[]): Loadings {
  requireNumber(baseMass, 'base in the cup', { unit: 'kg', greaterThan: 0 });
  const byName = new Map<string, { mass: number; limit: number }>();
  let total = 0;
  for (const { name, mass, limit } of additives) {
    requireNumber(mass, name, { unit: 'kg', atLeast: 0 });
    if (limit !== undefined) requireNumber(limit, `limit of ${name}`, { greaterThan: 0 });
    const before = byName.get(name) ?? { mass: 0, limit: NO_LIMIT };
    byName.set(name, {
      mass: before.mass + mass,
      limit: Math.min(before.limit, limit ?? NO_LIMIT),
    });
    total += mass / baseMass;
  }
  const each = [...byName].map(([name, { mass, limit }]) => {
    const loading = mass / baseMass;
    return { name, loading, ...verdictOf(loading, limit) };
  });
  return { total, each };
}

function verdictOf(loading: number, limit: number) {
  if (limit === NO_LIMIT) return { verdict: 'no limit known' } as const;
  if (loading > limit * (1 + TIE)) return { verdict: 'over limit', limit } as const;
  return { verdict: 'within limit', limit } as const;
}
