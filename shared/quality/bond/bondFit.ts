import { type LogisticCurve, logisticFit } from '../logistic/logisticFit.ts';
import { type LogisticPoint, tellingOf } from '../logistic/logisticPoint.ts';
import type { Threshold } from '../logistic/logisticThreshold.ts';
import { profileThreshold } from '../logistic/profileThreshold.ts';

/** A joint that was torn: how warm its faces met [°C], and how it came apart. */
export interface TornJoint {
  readonly contactTemperature: number;
  readonly tear: 'tears through' | 'tears in part' | 'peels clean';
}

/** What makes a fitted threshold weaker than it looks. */
export type BondRemark =
  /** No joint out of line: the curve's steepness is unknown */
  | { readonly kind: 'apart'; readonly peeledTo: number; readonly boundFrom: number }
  /** No surer than the usual figure is */
  | { readonly kind: 'wide'; readonly span: number };

export type BondFit =
  | {
      readonly kind: 'fitted';
      readonly joints: number;
      readonly curve: LogisticCurve;
      readonly threshold: Required<Threshold>;
      readonly slopeError: number;
      readonly remarks: readonly BondRemark[];
    }
  /** All bonded so far, or none: the threshold lies on one side of this [°C] */
  | {
      readonly kind: 'one side';
      readonly joints: number;
      readonly is: 'below' | 'above';
      readonly limit: number;
    }
  | {
      readonly kind: 'no threshold';
      readonly joints: number;
      readonly because: 'too few' | 'heat does not tell';
    };

/** Confidence of the threshold's limits. */
const BOND_CONFIDENCE = 0.9;
/** Fewer joints, or less evidence of either kind, put no figure in use. An assumption. */
const FEWEST = 6;
const FEWEST_OF_A_KIND = 2;
/** All joints on one side: if the threshold lay beyond the fourth of them, each had at most an even chance, all four 1 in 16. */
const IN_A_ROW = 4;
/** Width of the range of the usual figure, 112 to 122 °C [K]. */
const USUAL_SPAN = 10;

/**
 * The contact temperature at which half of the joints bond, from joints that were torn.
 *
 * Tearing through the plastic is a bond, peeling clean is none, tearing in part is half of each. The chance to bond is a
 * logistic curve of the contact temperature, fitted by Firth's method: no prior of ours, finite with few and with separated
 * joints. Limits at 90 % come from the penalized profile. With one kind of outcome only there is no figure, but a limit.
 *
 * @throws InputError on a contact temperature that is no number
 * @source FIRTH1993; HEINZESCHEMPER
 */
export function bondFit(joints: readonly TornJoint[]): BondFit {
  const count = joints.length;
  const points = joints.map(pointOf);
  const telling = tellingOf(points);
  if (telling === 'all passed' || telling === 'all failed') return oneSide(joints, telling);
  const bonded = points.reduce((sum, { passed }) => sum + passed, 0);
  const isScanty = count < FEWEST || Math.min(bonded, count - bonded) < FEWEST_OF_A_KIND;
  const curve = logisticFit(points, 'firth');
  if (isScanty || curve.kind === 'no fit')
    return { kind: 'no threshold', joints: count, because: 'too few' };
  if (curve.slope <= 0)
    return { kind: 'no threshold', joints: count, because: 'heat does not tell' };
  const { low, high, ...threshold } = profileThreshold(points, curve, BOND_CONFIDENCE);
  if (low === undefined || high === undefined)
    return { kind: 'no threshold', joints: count, because: 'heat does not tell' };
  return {
    kind: 'fitted',
    joints: count,
    curve,
    threshold: { ...threshold, low, high },
    slopeError: Math.sqrt(curve.covariance.slope),
    remarks: [
      ...(telling === 'apart' ? [apartOf(points)] : []),
      ...(high - low > USUAL_SPAN ? [{ kind: 'wide', span: high - low } as const] : []),
    ],
  };
}

const PASSED = { 'tears through': 1, 'tears in part': 0.5, 'peels clean': 0 } as const;

function pointOf({ contactTemperature, tear }: TornJoint): LogisticPoint {
  return { at: contactTemperature, passed: PASSED[tear], of: 1 };
}

function oneSide(joints: readonly TornJoint[], telling: 'all passed' | 'all failed'): BondFit {
  const isBelow = telling === 'all passed';
  const order = isBelow ? 1 : -1;
  const temperatures = joints
    .map(({ contactTemperature }) => contactTemperature)
    .sort((one, other) => order * (one - other));
  const limit = temperatures[IN_A_ROW - 1];
  const whole = { joints: joints.length };
  if (limit === undefined) return { kind: 'no threshold', ...whole, because: 'too few' };
  return { kind: 'one side', ...whole, is: isBelow ? 'below' : 'above', limit };
}

function apartOf(points: readonly LogisticPoint[]): BondRemark {
  const fails = points.filter(({ passed }) => passed < 1).map(({ at }) => at);
  const passes = points.filter(({ passed }) => passed > 0).map(({ at }) => at);
  return { kind: 'apart', peeledTo: Math.max(...fails), boundFrom: Math.min(...passes) };
}
