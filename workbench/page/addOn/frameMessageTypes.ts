import type { CallResult } from '../../host/Host.ts';

/** What a page in a frame tells the window around it. */
export type FromFrame =
  | {
      readonly kind: 'run';
      readonly id: number;
      readonly name: string;
      readonly args: readonly unknown[];
    }
  | { readonly kind: 'close' | 'escape' | 'focus' }
  | { readonly kind: 'size'; readonly width?: number; readonly height?: number };

/** The answer to a `run`. */
export interface ToFrame {
  readonly kind: 'result';
  readonly id: number;
  readonly result: CallResult;
}
