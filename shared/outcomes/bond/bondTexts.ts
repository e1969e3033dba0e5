import { DEFAULTS } from '../../material/defaults.ts';
import type { BondFit, BondRemark } from '../../quality/bond/bondFit.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { countText, temperatureText } from '../../words/quantityText.ts';

type Fitted = Extract<BondFit, { readonly kind: 'fitted' }>;

/** Logit of a chance of nine in ten. */
const NINE_IN_TEN = Math.log(9);

/** What to make of a fitted bond temperature: phrases without capital and full stop. */
export function bondTexts(
  { threshold, curve, remarks }: Fitted,
  system: UnitSystem,
): readonly string[] {
  const degrees = (value: number) => temperatureText(value, system);
  const { value, low, high } = threshold;
  const most = value + NINE_IN_TEN / curve.slope;
  return [
    `half of the joints bond at ${degrees(value)}, nine in ten at ${degrees(most)}; the first is between ${degrees(low)} and ${degrees(high)} nine times out of ten`,
    ...remarks.map((remark) => remarkWords(remark, system)),
  ];
}

function remarkWords(remark: BondRemark, system: UnitSystem): string {
  if (remark.kind === 'wide') {
    const { low, high } = DEFAULTS.bondTemperature;
    return `that is no surer than the usual figure, ${temperatureText(low, system)} to ${temperatureText(high, system)}: tear more joints near it`;
  }
  const { peeledTo, boundFrom } = remark;
  return `every joint up to ${temperatureText(peeledTo, system)} gave way and every joint from ${temperatureText(boundFrom, system)} held: tear some poured in between`;
}

/** Why torn joints give no figure to use. */
export function noBondText(fit: Exclude<BondFit, Fitted>, system: UnitSystem): string {
  const joints = countText(fit.joints, 'joint');
  if (fit.kind === 'one side') {
    const limit = temperatureText(fit.limit, system, fit.is === 'below' ? 'up' : 'down');
    return fit.is === 'below'
      ? `all ${joints} bonded, so the bond temperature is likely below ${limit}; how far below they do not tell, and the figure in use stays`
      : `none of ${joints} bonded, so the bond temperature is likely above ${limit}; how far above they do not tell: pour hotter before you tear more`;
  }
  return fit.because === 'too few'
    ? `${joints} tell too little: it takes six, with two that held and two that gave way among them`
    : 'whether a joint holds does not go with its contact temperature here: look for oil, release agent, dust or water on the layers';
}
