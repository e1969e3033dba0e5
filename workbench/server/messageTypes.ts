import type {
  CallResult,
  Host,
  LocalMutation,
  Menu,
  Operation,
  Selection,
  UiRequest,
} from '../host/Host.ts';

/** A Univer mutation a window made. */
export interface WindowMutation {
  readonly id: string;
  readonly params: unknown;
}

/** What a window tells the server. */
export type FromWindow =
  /** The mutations of one command, in order; `madeAt` is the last operation the window had seen. */
  | {
      readonly kind: 'change';
      readonly batch: number;
      readonly madeAt: number;
      readonly mutations: readonly WindowMutation[];
    }
  | {
      readonly kind: 'call';
      readonly call: number;
      readonly name: string;
      readonly args: readonly unknown[];
      readonly selection: Selection;
    }
  | { readonly kind: 'answer'; readonly id: number; readonly button: string }
  | { readonly kind: 'look'; readonly sheet: string; readonly cell: string };

/** A request with its page stored at an address of the server, because it runs in a frame of its own. */
export type ShownRequest =
  | Exclude<UiRequest, { readonly html: string }>
  | { readonly kind: 'sidebar'; readonly title: string; readonly source: string }
  | {
      readonly kind: 'dialog';
      readonly title: string;
      readonly source: string;
      readonly width: number;
      readonly height: number;
    };

/** What the server tells a window. */
export type ToWindow =
  | {
      readonly kind: 'start';
      readonly window: string;
      readonly book: string;
      readonly menus: readonly Menu[];
      /** Where changes are kept. */
      readonly keeps: 'file' | 'memory';
      readonly snapshot: ReturnType<Host['snapshot']>;
    }
  | { readonly kind: 'operation'; readonly operation: Operation }
  | {
      readonly kind: 'calculated';
      readonly sequence: number;
      readonly values: readonly LocalMutation[];
    }
  | { readonly kind: 'applied'; readonly batch: number; readonly sequence: number }
  /** The window no longer equals the workbook and must start again. */
  | { readonly kind: 'refused'; readonly batch: number; readonly because: string }
  | { readonly kind: 'result'; readonly call: number; readonly result: CallResult }
  | { readonly kind: 'show'; readonly request: ShownRequest }
  | {
      readonly kind: 'cell';
      readonly sheet: string;
      readonly cell: string;
      readonly message?: string;
    }
  | { readonly kind: 'progress' | 'log'; readonly text: string }
  | { readonly kind: 'saved' };
