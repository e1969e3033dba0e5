import type { TimerState } from '../../shared/day/timers/timerState.ts';

/** Tones as [start s, length s, pitch Hz]; high and quick calls to work, low and long says too late. */
type Tones = readonly (readonly [start: number, length: number, pitch: number])[];

const CUES: Partial<Record<TimerState['phase'], Tones>> = {
  go: [
    [0, 0.18, 880],
    [0.28, 0.18, 1175],
  ],
  soon: [
    [0, 0.1, 1320],
    [0.18, 0.1, 1320],
    [0.36, 0.1, 1320],
    [0.54, 0.1, 1320],
  ],
  over: [
    [0, 0.5, 330],
    [0.65, 0.5, 247],
  ],
};

let context: AudioContext | undefined;

/** Browsers stay silent until somebody presses something: call it in a button's handler. */
export function wakeSound(): void {
  context ??= new AudioContext();
  void context.resume();
}

/** Whether tones can be heard; otherwise only the page shows the cue. */
export function canSound(): boolean {
  return context?.state === 'running';
}

/** Plays the tones of a phase; a phase without any stays silent. */
export function playCue(phase: TimerState['phase']): void {
  if (context === undefined || !canSound()) return;
  for (const [start, length, pitch] of CUES[phase] ?? []) {
    const tone = context.createOscillator();
    const loudness = context.createGain();
    tone.frequency.value = pitch;
    loudness.gain.value = 0.4;
    tone.connect(loudness).connect(context.destination);
    tone.start(context.currentTime + start);
    tone.stop(context.currentTime + start + length);
  }
}
