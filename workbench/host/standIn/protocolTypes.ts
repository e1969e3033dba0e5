import type { MessagePort } from 'node:worker_threads';

/** A platform object on its way between the add-on's context and the host: its class and what it points to. */
export interface ObjectMark {
  readonly $object: string;
  readonly ref: unknown;
}

/** One method call of the add-on on a platform object. */
export interface ServiceCall {
  readonly object: string;
  readonly ref: unknown;
  readonly method: string;
  readonly args: readonly unknown[];
}

/** `self` changes what the called object points to; a `$self` value means the method returns that object. */
export type ServiceReply =
  | { readonly kind: 'value'; readonly value: unknown; readonly self?: unknown }
  | { readonly kind: 'error'; readonly message: string };

export interface SelfMark {
  readonly $self: true;
}

export const SELF: SelfMark = { $self: true };

/** The names the add-on may use: methods by class, fixed names (enumerations) by class, global objects by class. */
export interface PlatformApi {
  readonly methods: Readonly<Record<string, readonly string[]>>;
  readonly constants: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  readonly globals: Readonly<Record<string, string>>;
}

export type Transport = (call: ServiceCall) => ServiceReply;

export function isObjectMark(value: unknown): value is ObjectMark {
  return typeof value === 'object' && value !== null && '$object' in value;
}

export function isSelfMark(value: unknown): value is SelfMark {
  return typeof value === 'object' && value !== null && '$self' in value;
}

/** What a call runs: a top-level function with JSON arguments. */
export interface Job {
  readonly name: string;
  readonly args: readonly unknown[];
  /** The argument is the event of a trigger, in which marks stand for the platform's objects; never what a page sent. */
  readonly isEvent?: true;
}

export type JobResult =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'failure'; readonly message: string };

/** What the host hands the worker at its start. */
export interface WorkerSetup {
  readonly code: string;
  readonly api: PlatformApi;
  /** Replies of the host arrive here; the flag counts them. */
  readonly replies: MessagePort;
  readonly flag: Int32Array;
}

export interface WorkerJob extends Job {
  readonly now?: number;
}
