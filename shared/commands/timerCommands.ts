import type { RunningTimer, TimerChoice } from '../day/timers/timerTypes.ts';

interface TimersPayload {
  /** An order whose timers can be started; none when blank or absent. */
  readonly order?: string | undefined;
}

/** What runs, and what can be started. */
interface TimersAnswer {
  readonly kind: 'ok';
  readonly timers: readonly RunningTimer[];
  readonly choices: readonly TimerChoice[];
}

interface StartTimerPayload {
  readonly order: string;
  /** Which of its timers */
  readonly key: string;
  /** Milliseconds from 1970 on the page's clock when the button was pressed, as text */
  readonly at: string;
  /** Given anew to each press, so that one press starts one timer however often it is sent */
  readonly token: string;
}

interface StopTimerPayload {
  readonly id: string;
}

interface TimersChanged {
  readonly kind: 'ok';
  readonly timers: readonly RunningTimer[];
}

/** Commands of the timers. */
export interface TimerCommands {
  readonly timersFor: { readonly payload: TimersPayload; readonly answer: TimersAnswer };
  readonly startTimer: { readonly payload: StartTimerPayload; readonly answer: TimersChanged };
  readonly stopTimer: { readonly payload: StopTimerPayload; readonly answer: TimersChanged };
}
