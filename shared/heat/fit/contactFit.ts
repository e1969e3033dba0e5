import type { AdvisedReading } from './adviseReading.ts';

interface Estimate {
  readonly value: number;
  readonly standardError: number;
}

/** What to make of a fit, as facts; the words are made where they are shown. */
export type ContactRemark =
  | { readonly kind: 'contact and loss told apart'; readonly correlation: number }
  | {
      readonly kind: 'contact not told from loss';
      readonly readings: number;
      /** Of the two in a fit of both; undefined where no such fit exists */
      readonly correlation: number | undefined;
      readonly add: AdvisedReading;
    }
  | {
      readonly kind: 'readings scatter more than the probe';
      readonly residualDeviation: number;
      readonly readingError: number;
    }
  | { readonly kind: 'contact poorly known'; readonly relativeError: number };

/** Outcome of a fit of contact and loss to heat trials. */
export type ContactFit =
  | {
      readonly kind: 'fitted';
      /** Plate to mold [W/(m2 K)] */
      readonly contact: Estimate;
      /** Times the loss by correlation; the assumed one where the readings cannot tell */
      readonly lossShare: Estimate & { readonly from: 'readings' | 'assumption' };
      /** Reading less curve, trial by trial [K] */
      readonly residuals: readonly number[];
      readonly residualDeviation: number;
      readonly remarks: readonly ContactRemark[];
    }
  | {
      readonly kind: 'no fit';
      readonly because:
        | 'fewer than two readings'
        | 'tops hotter than any contact gives'
        | 'tops colder than any contact gives'
        | 'readings do not tell the contact';
    };
