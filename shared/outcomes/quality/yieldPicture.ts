import type { Shop } from '../../book/settings/settings.ts';
import { boilingPoint } from '../../heat/boilingPoint.ts';
import { type YieldCurve, yieldCurve } from '../../quality/charts/yieldCurve.ts';
import { formatFixed } from '../../units/formatPlain.ts';
import type { UnitSystem } from '../../units/measures.ts';
import type { LoggedRound } from './loggedRounds.ts';

/** Rounds differ this much more than single pieces would before it is said. */
const NOTABLE = 1.5;

const NO_CURVE: Readonly<Record<Extract<YieldCurve, { kind: 'no curve' }>['because'], string>> = {
  'fewer than two rounds': 'Yield against the mold top needs two rounds with a mold-top reading.',
  'one temperature':
    'Yield against the mold top needs readings that differ: all rounds were read at one temperature.',
  'all good': 'Every piece of the rounds with a mold-top reading is good: no curve to draw.',
  'all bad': 'Every piece of the rounds with a mold-top reading is bad: no curve to draw.',
};

/** The yield picture, or why there is none, as a sentence. */
export function yieldPicture(
  rounds: readonly LoggedRound[],
  { units, elevation }: Pick<Shop, 'units' | 'elevation'>,
  title: string,
): YieldAgainstTop | string {
  const read = rounds.flatMap(({ moldTop, poured, good }) =>
    moldTop === undefined ? [] : [{ moldTop, poured, good }],
  );
  const curve = yieldCurve(read);
  if (curve.kind === 'no curve') return NO_CURVE[curve.because];
  return {
    kind: 'yield-curve',
    title,
    system: units,
    rounds: read,
    curve: curve.points,
    boilingPoint: boilingPoint(elevation),
    says: saysOf(curve),
  };
}

function saysOf(curve: Extract<YieldCurve, { kind: 'curve' }>): readonly string[] {
  const { direction, dispersion, method } = curve;
  return [
    {
      'hotter is better': 'A hotter mold top went with more good pieces.',
      'hotter is worse': 'A hotter mold top went with fewer good pieces.',
      'no clear change': 'The rounds do not show that the mold top changes the yield.',
    }[direction],
    ...(dispersion > NOTABLE
      ? [
          `Rounds differ ${formatFixed(dispersion, 1)} times as much as single pieces would, so the band is widened.`,
        ]
      : []),
    ...(method === 'firth'
      ? [
          'One temperature parts good from bad, so the curve is held back by Firth’s method: a few rounds near that temperature would tell more.',
        ]
      : []),
  ];
}

/** What the yield picture shows: rounds by their mold top [degC], the curve through them and its band. */
export interface YieldAgainstTop {
  readonly kind: 'yield-curve';
  readonly title: string;
  readonly system: UnitSystem;
  readonly rounds: readonly {
    readonly moldTop: number;
    readonly poured: number;
    readonly good: number;
  }[];
  readonly curve: readonly {
    readonly moldTop: number;
    readonly rate: number;
    readonly low: number;
    readonly high: number;
  }[];
  /** Boiling point of water at the shop, which the plan wants the mold top to reach [degC]. */
  readonly boilingPoint: number;
  /** What the curve says and what it does not, one sentence each. */
  readonly says: readonly string[];
}
