import { type ContactAndLoss, type HeatTrial, trialTops } from './heatTrial.ts';
import { curveSlopes, dot } from './normalEquations.ts';

export interface AdvisedReading {
  /** Of the first trial, when to read its mold top once more [s] */
  readonly seconds: number;
  /** Expected standard error of the loss share with that reading added */
  readonly lossError: number;
}

/** Share of a parameter for differences: wide enough for curves that are followed to 1e-4 K. */
export const TRIAL_STEP = 2e-3;

/** When one more reading might be taken: every five minutes, for two hours [s]. */
const CANDIDATES = { every: 300, count: 24 } as const;

/**
 * When one more reading would tell the loss: the earliest that is good enough, else the earliest near the best there is.
 *
 * Error from the information of readings so far plus one: sigma^2 (J'J + j j')^-1.
 *
 * @param evidence - slopes of the readings so far by contact and loss share, deviation of one reading [K], > 0, and the
 * error of the loss share that is good enough, > 0
 */
export function adviseReading(
  trial: HeatTrial,
  at: ContactAndLoss,
  evidence: {
    readonly slopes: readonly (readonly number[])[];
    readonly deviation: number;
    readonly wanted: number;
  },
): AdvisedReading {
  const { every, count } = CANDIDATES;
  const times = Array.from({ length: count }, (_, index) => (index + 1) * every);
  const added = trialSlopes(
    [{ ...trial, readings: times.map((seconds) => ({ seconds, top: 0 })) }],
    at,
  );
  const [byContact = [], byLoss = []] = evidence.slopes;
  const [addedContact = [], addedLoss = []] = added;
  const advice = times.map((seconds, index): AdvisedReading => {
    const [contact, loss] = [addedContact[index] ?? 0, addedLoss[index] ?? 0];
    const own = dot(byContact, byContact) + contact ** 2;
    const other = dot(byLoss, byLoss) + loss ** 2;
    const shared = dot(byContact, byLoss) + contact * loss;
    const lossError = evidence.deviation * Math.sqrt(own / (own * other - shared ** 2));
    return { seconds, lossError };
  });
  const least = Math.min(...advice.map(({ lossError }) => lossError));
  // Near the plateau every further minute tells the same: nobody waits for the last twentieth.
  const goal = Math.max(evidence.wanted, 1.05 * least);
  return advice.find(({ lossError }) => lossError <= goal) ?? { seconds: every, lossError: least };
}

/** Slopes of all readings of the trials by contact and by loss share. */
export function trialSlopes(
  trials: readonly HeatTrial[],
  { contact, lossShare }: ContactAndLoss,
): readonly (readonly number[])[] {
  const tops = ([c = 0, l = 0]: readonly number[]) => allTops(trials, { contact: c, lossShare: l });
  return curveSlopes(tops, [contact, lossShare], [TRIAL_STEP * contact, TRIAL_STEP * lossShare]);
}

/** Tops of all readings of the trials, in their order [°C]. */
export function allTops(trials: readonly HeatTrial[], at: ContactAndLoss): readonly number[] {
  const tops: number[] = [];
  for (const trial of trials) {
    const times = trial.readings.map(({ seconds }) => seconds);
    tops.push(...trialTops(trial, times, at));
  }
  return tops;
}
