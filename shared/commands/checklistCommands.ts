import type { DayAnswer, DayPayload, ReplanAnswer } from './dayCommands.ts';

/** An order that can be put into a pour day. */
export interface DayChoice {
  readonly order: string;
  /** `yyyy-mm-dd` */
  readonly due?: string;
  readonly mold: string;
  readonly pattern: string;
  readonly quantity?: number;
}

/** What the pour day starts from. */
export interface DayForm {
  readonly kind: 'ok';
  /** `yyyy-mm-dd` in the workbook's zone */
  readonly today: string;
  /** Accepted or planned and not poured yet, by their due dates */
  readonly orders: readonly DayChoice[];
  /** Whether a plan is followed: there are ticks to replan from. */
  readonly isFollowed: boolean;
}

export interface ChecklistWritten {
  readonly kind: 'ok';
  readonly sheet: string;
  readonly lines: number;
}

interface DayPagePayload extends DayPayload {
  /** `ticks` takes the plan that is followed, replanned; the question above where it is left out. */
  readonly from?: string | undefined;
}

/** What the page to print shows. */
interface DayPage {
  readonly kind: 'ok';
  readonly shopName: string;
  readonly day: DayAnswer | ReplanAnswer;
}

type Nothing = Readonly<Record<string, never>>;

/** Commands of the shared checklist and of the pour day's pages. */
export interface ChecklistCommands {
  readonly startDay: { readonly payload: Nothing; readonly answer: DayForm };
  readonly writeChecklist: { readonly payload: DayPayload; readonly answer: ChecklistWritten };
  readonly updateChecklist: { readonly payload: Nothing; readonly answer: ChecklistWritten };
  readonly showDay: { readonly payload: DayPagePayload; readonly answer: { readonly kind: 'ok' } };
  readonly dayPageFor: { readonly payload: DayPagePayload; readonly answer: DayPage };
}
