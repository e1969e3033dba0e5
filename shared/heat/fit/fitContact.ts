import { requireNumber } from '../../errors/requireNumber.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { adviseReading, allTops, TRIAL_STEP, trialSlopes } from './adviseReading.ts';
import type { ContactFit, ContactRemark } from './contactFit.ts';
import { type CurveFit, fitCurve } from './fitCurve.ts';
import { type HeatTrial, requireReadings } from './heatTrial.ts';
import { dot } from './normalEquations.ts';

/** Of a shop's loss around the correlations, as a share: the default's range is 8 to 13 around 10.4. */
const LOSS_SPREAD = 0.2;
/** Past these no contact of plate and mold is found [W/(m2 K)]. */
const CONTACT_RANGE = { least: 1, most: 20_000 } as const;
const SHARE_RANGE = { least: 0.05, most: 20 } as const;
/** Two figures of a surface probe, or tape under an infrared thermometer [K]. From memory. */
const READING_ERROR = 2;

/**
 * Contact conductance of a plate, and its loss where the readings can tell, from heat trials.
 *
 * Least squares of readings on the accurate heat-up path. Errors take the larger of residual deviation and reading
 * error, so that a lucky fit of few readings is not believed; an assumed loss adds its own spread to the contact's error.
 * The loss is taken from the readings once they know it better than the assumption does.
 * Trials of one plate only: another plate has another contact.
 *
 * @param readingError - standard deviation of one reading [K], > 0
 * @param assumedLoss - share that holds where the readings cannot tell it, > 0
 * @throws InputError on a figure out of range
 * @source MARQUARDT; errors BATESWATTS, section 2.3
 */
export function fitContact(
  trials: readonly HeatTrial[],
  readingError: number = READING_ERROR,
  assumedLoss = 1,
): ContactFit {
  requireNumber(readingError, 'error of a reading', { unit: 'differenceC', greaterThan: 0 });
  requireNumber(assumedLoss, 'heat loss', { greaterThan: 0 });
  for (const { readings } of trials) requireReadings(readings);
  const readings = trials.flatMap((trial) => trial.readings.map(({ top }) => top));
  const first = trials[0];
  if (!first || readings.length < 2) return { kind: 'no fit', because: 'fewer than two readings' };
  const beyond = beyondContact(trials, readings, assumedLoss);
  if (beyond) return { kind: 'no fit', because: beyond };
  const guess = first.mold.contactConductance ?? DEFAULTS.contactConductanceGriddle.value;
  // From the same start whatever is assumed: what the readings tell must not hang on it.
  const both: CurveFit | undefined =
    readings.length > 2 ? fitTrials(trials, readings, [guess, 1], assumedLoss) : undefined;
  const told = both?.kind === 'fitted' && widened(both, readingError, 1) <= LOSS_SPREAD;
  if (told) return bothFitted(both, readingError);
  const alone = fitTrials(trials, readings, [guess], assumedLoss);
  if (alone.kind === 'no fit')
    return { kind: 'no fit', because: 'readings do not tell the contact' };
  const contact = alone.parameters[0] ?? guess;
  const at = { contact, lossShare: assumedLoss };
  const slopes = trialSlopes(trials, at);
  const deviation = Math.max(alone.residualDeviation, readingError);
  const evidence = { slopes, deviation, wanted: LOSS_SPREAD };
  const add = adviseReading(first, at, evidence);
  const correlation = both?.kind === 'fitted' ? both.correlation[0]?.[1] : undefined;
  const untold = {
    kind: 'contact not told from loss',
    readings: readings.length,
    correlation,
    add,
  } as const;
  return contactFitted(alone, readingError, { slopes, untold, assumedLoss });
}

type Fitted = Extract<CurveFit, { readonly kind: 'fitted' }>;

function fitTrials(
  trials: readonly HeatTrial[],
  readings: readonly number[],
  start: readonly number[],
  assumedLoss: number,
): CurveFit {
  const curve = ([contact = 0, lossShare = assumedLoss]: readonly number[]) =>
    isBetween(contact, CONTACT_RANGE) && isBetween(lossShare, SHARE_RANGE)
      ? allTops(trials, { contact, lossShare })
      : readings.map(() => Number.NaN);
  return fitCurve({ curve, readings, start, derivativeStep: TRIAL_STEP, precision: 1e-6 });
}

function isBetween(value: number, { least, most }: { least: number; most: number }): boolean {
  return value >= least / 2 && value <= 2 * most;
}

/** Readings above what the best contact gives, or below what the worst gives, on their mean. */
function beyondContact(
  trials: readonly HeatTrial[],
  readings: readonly number[],
  lossShare: number,
) {
  const excess = (contact: number) => {
    const tops = allTops(trials, { contact, lossShare });
    return readings.reduce((sum, reading, index) => sum + reading - (tops[index] ?? 0), 0);
  };
  if (excess(CONTACT_RANGE.most) >= 0) return 'tops hotter than any contact gives';
  if (excess(CONTACT_RANGE.least) <= 0) return 'tops colder than any contact gives';
  return undefined;
}

/** Standard error with the larger of what the readings scatter and what the probe is off. */
function widened(fit: Fitted, readingError: number, index: number): number {
  const error = fit.errorsPerDeviation[index] ?? Number.NaN;
  return error * Math.max(fit.residualDeviation, readingError);
}

function bothFitted(fit: Fitted, readingError: number): ContactFit {
  const [contact = 0, lossShare = 0] = fit.parameters;
  const correlation = fit.correlation[0]?.[1] ?? 0;
  const error = widened(fit, readingError, 0);
  const told = { kind: 'contact and loss told apart', correlation } as const;
  return {
    kind: 'fitted',
    contact: { value: contact, standardError: error },
    lossShare: { value: lossShare, standardError: widened(fit, readingError, 1), from: 'readings' },
    residuals: fit.residuals,
    residualDeviation: fit.residualDeviation,
    remarks: [told, ...doubts(fit, readingError, error / contact)],
  };
}

function contactFitted(
  fit: Fitted,
  readingError: number,
  {
    slopes,
    untold,
    assumedLoss,
  }: {
    slopes: readonly (readonly number[])[];
    untold: ContactRemark;
    assumedLoss: number;
  },
): ContactFit {
  const contact = fit.parameters[0] ?? 0;
  const [byContact = [], byLoss = []] = slopes;
  const shift = (LOSS_SPREAD * dot(byContact, byLoss)) / dot(byContact, byContact);
  const error = Math.hypot(widened(fit, readingError, 0), shift);
  return {
    kind: 'fitted',
    contact: { value: contact, standardError: error },
    lossShare: { value: assumedLoss, standardError: LOSS_SPREAD, from: 'assumption' },
    residuals: fit.residuals,
    residualDeviation: fit.residualDeviation,
    remarks: [untold, ...doubts(fit, readingError, error / contact)],
  };
}

function doubts(fit: Fitted, readingError: number, relativeError: number): ContactRemark[] {
  const remarks: ContactRemark[] = [];
  const { residualDeviation } = fit;
  // Twice: with few readings the deviation itself is uncertain by half.
  if (residualDeviation > 2 * readingError)
    remarks.push({ kind: 'readings scatter more than the probe', residualDeviation, readingError });
  if (relativeError > 0.3) remarks.push({ kind: 'contact poorly known', relativeError });
  return remarks;
}
