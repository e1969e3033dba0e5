/// <reference types="google-apps-script" />

import type { AddOn } from '../addOn.ts';
import type { Engine } from '../engine.ts';
import type { MenuItem, UiRequest } from '../Host.ts';
import type { Box } from '../parseA1.ts';
import type { PlatformState } from '../platformState.ts';

/** What the platform lets a run of the add-on do. */
export type RunMode = 'full' | 'simple trigger' | 'custom function';

/** The spreadsheet and everything else that outlives a run. */
export interface Platform {
  readonly engine: Engine;
  readonly addOn: AddOn;
  readonly zone: string;
  /** Of the spreadsheet, such as `de_DE`. */
  readonly locale: string;
  /** Changes whenever the workbook is another one. */
  readonly spreadsheetId: string;
  state(): PlatformState;
  change(part: Partial<PlatformState>): void;
  /** The document lock: who holds it, if anybody. */
  lock: symbol | undefined;
  settled(): Promise<void>;
  addMenu(title: string, items: readonly MenuItem[]): void;
  show(window: string, request: UiRequest): void;
  /** Shows an alert and resolves with the button the user chose. */
  ask(window: string, alert: AlertText): Promise<string>;
  /** A line the add-on writes to its console. */
  log(text: string): void;
  uuid(): string;
  /** The address of who edits, as far as the platform tells it. @throws Error where it refuses */
  email(): string;
}

export interface AlertText {
  readonly title: string;
  readonly text: string;
  readonly buttons: 'ok' | 'ok-cancel' | 'yes-no';
}

/** One run of the add-on: a call from a menu or page, a trigger, or a calculation of sheet functions. */
export interface Session {
  readonly platform: Platform;
  readonly mode: RunMode;
  readonly window: string;
  readonly key: symbol;
  selection: { readonly sheet: string; readonly box: Box };
}

/**
 * What a method does beyond answering from what it points to: `values` reads calculated values, `write` changes the
 * spreadsheet, `write below values` changes it where the calculated values end, `ui` shows something.
 */
export type Effect = 'none' | 'values' | 'write' | 'write below values' | 'ui';

/** Whether a method has to wait until every formula is calculated. */
export function readsValues(effect: Effect): boolean {
  return effect === 'values' || effect === 'write below values';
}

export interface Method<Ref> {
  readonly effect: Effect;
  readonly run: (session: Session, ref: Ref, args: readonly unknown[]) => unknown;
}

type MethodName<Type> = {
  [Key in keyof Type]: Type[Key] extends (...args: never[]) => unknown ? Key : never;
}[keyof Type];

/** Methods of one platform class; a name the platform does not have fails to compile. */
export type Methods<Type, Ref> = { readonly [Key in MethodName<Type>]?: Method<Ref> };

export function answerMethod<Ref>(run: Method<Ref>['run']): Method<Ref> {
  return { effect: 'none', run };
}

export function valuesMethod<Ref>(run: Method<Ref>['run']): Method<Ref> {
  return { effect: 'values', run };
}

export function writeMethod<Ref>(run: Method<Ref>['run']): Method<Ref> {
  return { effect: 'write', run };
}

export function uiMethod<Ref>(run: Method<Ref>['run']): Method<Ref> {
  return { effect: 'ui', run };
}

/** A result that also changes what the called object points to, as the platform's builders do. */
export interface WithSelf {
  readonly $ref: unknown;
  readonly value: unknown;
}

export function withSelf(ref: unknown, value: unknown): WithSelf {
  return { $ref: ref, value };
}

export function isWithSelf(value: unknown): value is WithSelf {
  return typeof value === 'object' && value !== null && '$ref' in value;
}
