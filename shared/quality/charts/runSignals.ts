/** Which side of the center line; `high` is the greater value. */
type Side = 'high' | 'low';

/** One rule: `needed` of `window` points in a row lie on one side, beyond so many standard deviations from the center line. */
interface RunRule {
  readonly needed: number;
  readonly window: number;
  readonly beyond: number;
}

/**
 * The four rules for one side of the center line, as they stand in the handbook of 1956; the trend rules that others add are left
 * out, since each more rule is one more kind of false alarm.
 * @source WESTERNELECTRIC, zone tests; NISTHANDBOOK, section 6.3.2
 */
const RUN_RULES = {
  limit: { needed: 1, window: 1, beyond: 3 },
  twoOfThree: { needed: 2, window: 3, beyond: 2 },
  fourOfFive: { needed: 4, window: 5, beyond: 1 },
  eightInRow: { needed: 8, window: 8, beyond: 0 },
} as const satisfies Readonly<Record<string, RunRule>>;

export type RuleKey = keyof typeof RUN_RULES;

/** A point as the rules see it. */
export interface RulePoint {
  /** Standard deviations from the center line. */
  readonly z: number;
  /** Chance that luck alone puts a point beyond so many standard deviations on a side, 0 to 1. */
  readonly chanceBeyond: (sigmas: number, side: Side) => number;
  /** Chance that luck alone puts a point as far out on its side as this one, 0 to 1. */
  readonly chanceAsFar: number;
}

/** Points that break a rule. */
export interface Signal {
  readonly rule: RuleKey;
  readonly side: Side;
  /** First and last point that it is about, counted from 0. */
  readonly from: number;
  readonly to: number;
  /** Chance that luck alone breaks the rule at a given place, where it was first broken; for one point, that it is as far out. */
  readonly chance: number;
}

/**
 * Each rule by itself gives a false alarm at 1.4 to 3.9 of 1,000 places when the points are normal. Where few pieces make a point
 * as far out, or a run that breaks a rule at its place, more likely than this, it says too little and is no signal.
 */
const MOST_LUCK = 0.01;

/** On the line is not beyond it; digits past the twelfth are not a difference. */
const EDGE = 1e-9;

/**
 * Every place where points break a rule; places that overlap are one signal, from the first point that counts to the last.
 * @param points - in the order they were made
 * @returns by rule, then by place
 */
export function runSignals(points: readonly RulePoint[]): readonly Signal[] {
  const sides: readonly Side[] = ['high', 'low'];
  const rules: readonly RuleKey[] = ['limit', 'twoOfThree', 'fourOfFive', 'eightInRow'];
  return rules.flatMap((rule) =>
    sides
      .flatMap((side) => signalsOf(points, rule, side))
      .sort((one, other) => one.from - other.from),
  );
}

function signalsOf(points: readonly RulePoint[], rule: RuleKey, side: Side): readonly Signal[] {
  const { needed, window, beyond } = RUN_RULES[rule];
  const sign = side === 'high' ? 1 : -1;
  const isBeyond = ({ z }: RulePoint) => z * sign > beyond + EDGE;
  const found: Signal[] = [];
  points.forEach((point, to) => {
    if (!isBeyond(point)) return;
    const start = Math.max(0, to - window + 1);
    const seen = points.slice(start, to + 1);
    if (seen.filter(isBeyond).length < needed) return;
    const from = start + seen.findIndex(isBeyond);
    const last = found[found.length - 1];
    if (last !== undefined && window > 1 && from <= last.to) {
      found[found.length - 1] = { ...last, to };
      return;
    }
    const chance =
      window === 1
        ? point.chanceAsFar
        : chanceOf(
            seen.map((one) => one.chanceBeyond(beyond, side)),
            needed,
          );
    if (chance <= MOST_LUCK) found.push({ rule, side, from, to, chance });
  });
  return found;
}

/** Chance that at least `needed` of independent events happen. */
function chanceOf(chances: readonly number[], needed: number): number {
  // ways[k]: chance that k of those seen so far happened.
  let ways = [1];
  for (const chance of chances)
    ways = [...ways, 0].map((way, count) => way * (1 - chance) + (ways[count - 1] ?? 0) * chance);
  return Math.min(
    1,
    ways.slice(needed).reduce((sum, way) => sum + way, 0),
  );
}
