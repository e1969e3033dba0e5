import type { QualitySummary } from '../outcomes/quality/qualitySummary.ts';

export interface QualityPayload {
  /** A mold or pattern of the log; all when blank or absent. */
  readonly mold?: string | undefined;
  readonly pattern?: string | undefined;
  /** `rounds` or `runs`; rounds when absent. */
  readonly points?: string | undefined;
}

export interface QualityAnswer extends QualitySummary {
  readonly kind: 'ok';
}

interface QualityShown {
  readonly kind: 'ok';
}

/** Commands of what came out. */
export interface QualityCommands {
  readonly qualityFor: { readonly payload: QualityPayload; readonly answer: QualityAnswer };
  readonly showQuality: { readonly payload: QualityPayload; readonly answer: QualityShown };
}
