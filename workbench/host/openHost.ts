import { randomUUID } from 'node:crypto';
import { type AddOn, readAddOn } from './addOn.ts';
import { type AlertQueue, alertQueue } from './alertQueue.ts';
import { applyChange } from './applyChange.ts';
import { bookFile } from './bookFile.ts';
import { callQueue } from './callQueue.ts';
import { cellAccess } from './cellAccess.ts';
import { editOf } from './editOf.ts';
import { emptyWorkbook } from './emptyWorkbook.ts';
import { nextUnit, startEngine } from './engine.ts';
import { functionCalls } from './functionCalls.ts';
import type { Host, HostOptions, Menu } from './Host.ts';
import { type HostState, hostState } from './hostState.ts';
import type { Platform, Session } from './platform/session.ts';
import { EMPTY_PLATFORM_STATE } from './platformState.ts';
import { sheetFunctions } from './sheetFunctions.ts';

/**
 * Opens a workbook with the built add-on in it: formula engine, add-on runs, file.
 *
 * @throws Error when the add-on or an existing workbook file cannot be read
 */
export async function openHost(options: HostOptions): Promise<Host> {
  const addOn = readAddOn(options.dist);
  const zone = options.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  const unit = nextUnit();
  const file = options.book === undefined ? undefined : bookFile(options.book);
  const start = options.copyOf === undefined ? file : bookFile(options.copyOf);
  const stored = await start?.read(unit);
  // Calculation starts after the platform below exists.
  const functions = functionCalls(addOn, () => calculating, options.now);
  const made = sheetFunctions(addOn.sheetFunctions, zone, functions.run);
  const engine = startEngine(stored?.workbook ?? emptyWorkbook(unit, 'Workbook'), made);
  for (const { id, params } of stored?.setup ?? []) engine.mutate(id, params, 'host');
  const state = hostState(engine, functions, stored?.platformState ?? EMPTY_PLATFORM_STATE);
  const menus: Menu[] = [];
  const alerts = alertQueue(state);
  const { email = () => '', locale = 'en_US' } = options;
  const platform = platformOf({ state, addOn, zone, menus, alerts, email, locale });
  const calculating: Session = {
    platform,
    mode: 'custom function',
    window: 'host',
    key: Symbol('calculation'),
    selection: firstCell(state),
  };
  const saving = file?.keep(state);
  const calls = callQueue({ addOn, platform, state, now: options.now });
  await state.settled();
  await calls.opened();
  const read = cellAccess(state, functions, { zone, locale });
  return {
    ...read,
    apply: (change) => {
      const done = applyChange(state, change);
      const edit = done.kind === 'applied' ? editOf(change.id, change.params) : undefined;
      if (edit) calls.edited(edit);
      return done;
    },
    type: (sheet, cell, text) => {
      calls.edited(read.type(sheet, cell, text));
    },
    call: calls.call,
    answer: alerts.answer,
    menus: () => menus,
    holdLock: () => calls.holdLock(),
    settled: state.settled,
    listen: state.listen,
    save: async () => {
      await state.settled();
      await saving?.now();
    },
    close: async () => {
      await state.settled();
      await saving?.close();
      await calls.close();
      engine.dispose();
    },
  };
}

function firstCell(state: HostState): Session['selection'] {
  const sheet = state.engine.workbook.getSheets()[0]?.getSheetId() ?? '0';
  return { sheet, box: { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 } };
}

function platformOf(parts: {
  readonly state: HostState;
  readonly addOn: AddOn;
  readonly zone: string;
  readonly email: () => string;
  readonly locale: string;
  readonly menus: Menu[];
  readonly alerts: AlertQueue;
}): Platform {
  const { state, addOn, zone, menus, alerts, email, locale } = parts;
  const platform: Platform = {
    engine: state.engine,
    addOn,
    zone,
    locale,
    spreadsheetId: state.engine.unit,
    state: state.platformState,
    change: state.change,
    lock: undefined,
    settled: state.settled,
    addMenu: (title, items) => {
      // A menu of the same title takes the place of the earlier one.
      const same = menus.findIndex((menu) => menu.title === title);
      menus.splice(same < 0 ? menus.length : same, 1, { title, items });
    },
    show: (window, request) => state.emit({ kind: 'ui', window, request }),
    ask: alerts.ask,
    log: (text) => state.emit({ kind: 'log', text }),
    uuid: randomUUID,
    email,
  };
  return platform;
}
