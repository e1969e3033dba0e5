import type { AddOn } from './addOn.ts';
import { callRunner, type Service } from './callRunner.ts';
import type { CallResult, Host, Selection } from './Host.ts';
import type { HostState } from './hostState.ts';
import { type Box, parseA1 } from './parseA1.ts';
import { methodOf, replyOf, requireAllowed } from './platform/platformApi.ts';
import { type Platform, type RunMode, readsValues, type Session } from './platform/session.ts';
import { rangeMark } from './platform/sheetOf.ts';
import { sheetNamed, sheetSize } from './sheetNamed.ts';
import { jsonOnly } from './standIn/jsonOnly.ts';
import type { Job } from './standIn/protocolTypes.ts';
import { messageOf } from './standIn/runJob.ts';

export interface CallQueue extends Pick<Host, 'call' | 'holdLock'> {
  /** Runs the simple trigger of opening, which may add menus but show nothing. */
  opened(): Promise<CallResult>;
  /** Runs the simple trigger of an edit; where too many wait already, the platform leaves it out. */
  edited(edit: Edit): void;
  close(): Promise<void>;
}

/** What a person changed: cells of one sheet, and what one cell holds now. */
export interface Edit {
  readonly sheet: string;
  readonly box: Box;
  readonly value?: string;
}

/** Edits that wait for their trigger, as the platform queues them. */
const MOST_EDITS = 2;

interface Parts {
  readonly addOn: AddOn;
  readonly platform: Platform;
  readonly state: HostState;
  readonly now: (() => Date) | undefined;
}

/** Runs calls of the add-on one after the other. */
export function callQueue({ addOn, platform, state, now }: Parts): CallQueue {
  const runner = callRunner(addOn.code);
  let last: Promise<unknown> = Promise.resolve();
  let isClosed = false;

  function enqueue(job: () => Promise<CallResult>): Promise<CallResult> {
    const result = last.then((): CallResult | Promise<CallResult> =>
      isClosed ? { kind: 'failure', message: 'The workbook was closed' } : job(),
    );
    last = result;
    return result;
  }

  async function run(job: Job, session: Session) {
    const release = state.hold();
    try {
      return await runner.run(job, serviceFor(session), now?.().getTime());
    } finally {
      if (platform.lock === session.key) platform.lock = undefined;
      release();
      await state.settled();
    }
  }

  const call: Host['call'] = (name, args, from) => {
    const refused = refusal(addOn, name, args);
    if (refused !== undefined) return Promise.resolve({ kind: 'failure', message: refused });
    // JSON turns what is missing in an array into null, as on the platform.
    const passed = args.map((arg) => jsonOnly(arg, 'the argument'));
    return enqueue(() => run({ name, args: passed }, newSession(platform, 'full', from)));
  };

  const waiting = { edits: 0 };

  function trigger(name: string, event: object): Promise<CallResult> {
    if (!addOn.functions.includes(name)) return Promise.resolve({ kind: 'value', value: null });
    const from = { window: 'host', selection: { sheet: '', range: 'A1' } };
    const job: Job = { name, args: [{ authMode: 'LIMITED', ...event }], isEvent: true };
    return enqueue(() => run(job, newSession(platform, 'simple trigger', from)));
  }

  return {
    call,
    opened: () => trigger('onOpen', {}),
    edited: ({ sheet, box, value }) => {
      if (waiting.edits >= MOST_EDITS) return;
      waiting.edits += 1;
      const event = {
        range: rangeMark(sheet, box),
        user: { $object: 'User', ref: null },
        ...(value !== undefined && { value }),
      };
      void trigger('onEdit', event).then((result) => {
        waiting.edits -= 1;
        if (result.kind === 'failure' && !isClosed) platform.log(`onEdit: ${result.message}`);
      });
    },
    holdLock: () => {
      const other = Symbol('another person');
      platform.lock ??= other;
      return () => {
        if (platform.lock === other) platform.lock = undefined;
      };
    },
    close: () => {
      isClosed = true;
      return runner.close();
    },
  };
}

/** Why a call is not made at all. */
function refusal(addOn: AddOn, name: string, args: readonly unknown[]): string | undefined {
  if (name.endsWith('_')) return `${name} is private and cannot be called`;
  if (!addOn.functions.includes(name)) return `Script function not found: ${name}`;
  try {
    for (const arg of args) jsonOnly(arg, `the argument of ${name}`);
    return undefined;
  } catch (error) {
    return messageOf(error);
  }
}

function newSession(
  platform: Platform,
  mode: RunMode,
  from: { readonly window: string; readonly selection: Selection },
): Session {
  const { engine } = platform;
  const sheet = sheetNamed(engine, from.selection.sheet) ?? engine.workbook.getSheets()[0];
  if (!sheet) throw new Error('the workbook has no sheet');
  const box = parseA1(from.selection.range, sheetSize(sheet));
  return {
    platform,
    mode,
    window: from.window,
    key: Symbol('run'),
    selection: {
      sheet: sheet.getSheetId(),
      box: box ?? { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 },
    },
  };
}

/** Answers the platform calls of one run. */
function serviceFor(session: Session): Service {
  return async (call) => {
    try {
      const method = methodOf(call);
      if (!method) throw new Error(`${call.object}.${call.method} does not exist`);
      requireAllowed(session, call, method);
      if (readsValues(method.effect)) await session.platform.settled();
      return replyOf(await method.run(session, call.ref, call.args));
    } catch (error) {
      return { kind: 'error', message: messageOf(error) };
    }
  };
}
