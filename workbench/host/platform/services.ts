import { isDateMark } from '../cells.ts';
import { formatDate, parseDate } from '../dates.ts';
import type { MenuItem } from '../Host.ts';
import { SELF } from '../standIn/protocol.ts';
import { mismatch, number, optionalText, pointed, text, whole } from './args.ts';
import { answer, type Methods, type Session, ui, withSelf, write } from './session.ts';

export interface HtmlRef {
  readonly html: string;
  readonly title: string;
  readonly width: number;
  readonly height: number;
}

export interface MenuRef {
  readonly title: string;
  readonly items: readonly MenuItem[];
}

function output(html: string) {
  return {
    $object: 'HtmlOutput',
    ref: { html, title: '', width: 600, height: 400 } satisfies HtmlRef,
  };
}

export const HTML_SERVICE: Methods<GoogleAppsScript.HTML.HtmlService, null> = {
  createHtmlOutput: answer((_session, _ref, args) => output(optionalText(args, 0) ?? '')),
  createHtmlOutputFromFile: answer((session, _ref, args) => {
    const page = session.platform.addOn.pages[text(args, 0).replace(/\.html$/, '')];
    if (page === undefined) throw new Error(`No HTML file named ${text(args, 0)} was found.`);
    return output(page);
  }),
};

export const HTML_OUTPUT: Methods<GoogleAppsScript.HTML.HtmlOutput, HtmlRef> = {
  setTitle: answer((_session, ref, args) => withSelf({ ...ref, title: text(args, 0) }, SELF)),
  setWidth: answer((_session, ref, args) => withSelf({ ...ref, width: whole(args, 0) }, SELF)),
  setHeight: answer((_session, ref, args) => withSelf({ ...ref, height: whole(args, 0) }, SELF)),
  setContent: answer((_session, ref, args) => withSelf({ ...ref, html: text(args, 0) }, SELF)),
  append: answer((_session, ref, args) =>
    withSelf({ ...ref, html: ref.html + text(args, 0) }, SELF),
  ),
  addMetaTag: answer(() => SELF),
  getContent: answer((_session, ref) => ref.html),
  getTitle: answer((_session, ref) => ref.title),
};

function newMenu(title: string) {
  return { $object: 'Menu', ref: { title, items: [] } satisfies MenuRef };
}

function alertText(args: readonly unknown[]) {
  const texts = args.filter((arg): arg is string => typeof arg === 'string' && !(arg in BUTTONS));
  const set = args.find(
    (arg): arg is keyof typeof BUTTONS => typeof arg === 'string' && arg in BUTTONS,
  );
  const [first = '', second] = texts;
  return {
    title: second === undefined ? '' : first,
    text: second ?? first,
    buttons: BUTTONS[set ?? 'OK'],
  };
}

const BUTTONS = { OK: 'ok', OK_CANCEL: 'ok-cancel', YES_NO: 'yes-no' } as const;

export const UI: Methods<GoogleAppsScript.Base.Ui, null> = {
  createMenu: answer((_session, _ref, args) => newMenu(text(args, 0))),
  createAddonMenu: answer(() => newMenu('Poursmith')),
  alert: ui((session, _ref, args) => session.platform.ask(session.window, alertText(args))),
  showSidebar: ui((session, _ref, args) => {
    const { html, title } = pointed<HtmlRef>(args, 0, 'HtmlOutput');
    session.platform.show(session.window, { kind: 'sidebar', title, html });
  }),
  showModalDialog: ui(dialog),
  showModelessDialog: ui(dialog),
};

function dialog(session: Session, _ref: null, args: readonly unknown[]) {
  const { html, width, height } = pointed<HtmlRef>(args, 0, 'HtmlOutput');
  session.platform.show(session.window, {
    kind: 'dialog',
    title: text(args, 1),
    html,
    width,
    height,
  });
}

export const MENU: Methods<GoogleAppsScript.Base.Menu, MenuRef> = {
  addItem: answer((_session, ref, args) => {
    const item = { label: text(args, 0), run: text(args, 1) };
    return withSelf({ ...ref, items: [...ref.items, item] }, SELF);
  }),
  addSeparator: answer((_session, ref) =>
    withSelf({ ...ref, items: [...ref.items, { label: '' }] }, SELF),
  ),
  addToUi: answer((session, ref) => session.platform.addMenu(ref.title, ref.items)),
};

export const LOCK_SERVICE: Methods<GoogleAppsScript.Lock.LockService, null> = {
  getDocumentLock: answer(() => ({ $object: 'Lock', ref: null })),
  getScriptLock: answer(() => ({ $object: 'Lock', ref: null })),
};

/** Waits for the document lock; the wait is real, so that a busy workbook is felt as it is. */
async function acquire(session: Session, patience: number): Promise<boolean> {
  const { platform } = session;
  const until = Date.now() + patience;
  while (platform.lock !== undefined && platform.lock !== session.key) {
    if (Date.now() >= until) return false;
    await new Promise((resolve) => setTimeout(resolve, Math.min(20, patience)));
  }
  platform.lock = session.key;
  return true;
}

export const LOCK: Methods<GoogleAppsScript.Lock.Lock, null> = {
  tryLock: write((session, _ref, args) => acquire(session, number(args, 0))),
  waitLock: write(async (session, _ref, args) => {
    if (await acquire(session, number(args, 0))) return;
    throw new Error('Lock timeout: another process was holding the lock for too long.');
  }),
  hasLock: answer((session) => session.platform.lock === session.key),
  releaseLock: answer((session) => {
    if (session.platform.lock === session.key) session.platform.lock = undefined;
  }),
};

/** Limits of the platform's store of properties [characters]. */
const PROPERTY_LIMIT = 9 * 1024;
const STORE_LIMIT = 500 * 1024;

export const PROPERTIES_SERVICE: Methods<GoogleAppsScript.Properties.PropertiesService, null> = {
  getDocumentProperties: answer(() => ({ $object: 'Properties', ref: 'document' })),
  getUserProperties: answer(() => ({ $object: 'Properties', ref: 'user' })),
  getScriptProperties: answer(() => ({ $object: 'Properties', ref: 'script' })),
};

function storeOf(session: Session, store: string): Readonly<Record<string, string>> {
  const { properties } = session.platform.extras();
  const prefix = `${store}:`;
  return Object.fromEntries(
    Object.entries(properties)
      .filter(([key]) => key.startsWith(prefix))
      .map(([key, value]) => [key.slice(prefix.length), value]),
  );
}

function setProperty(session: Session, store: string, args: readonly unknown[]) {
  const [key, value] = [text(args, 0), text(args, 1)];
  if (value.length > PROPERTY_LIMIT) throw new Error('Argument too large: value');
  const { properties } = session.platform.extras();
  const changed = { ...properties, [`${store}:${key}`]: value };
  if (JSON.stringify(changed).length > STORE_LIMIT) {
    throw new Error(
      'You have exceeded the property storage quota. Please remove some properties and try again.',
    );
  }
  session.platform.change({ properties: changed });
  return SELF;
}

export const PROPERTIES: Methods<GoogleAppsScript.Properties.Properties, string> = {
  getProperty: answer((session, ref, args) => storeOf(session, ref)[text(args, 0)] ?? null),
  getProperties: answer(storeOf),
  getKeys: answer((session, ref) => Object.keys(storeOf(session, ref))),
  setProperty: write(setProperty),
  deleteProperty: write((session, ref, args) => {
    const { [`${ref}:${text(args, 0)}`]: _gone, ...properties } =
      session.platform.extras().properties;
    session.platform.change({ properties });
    return SELF;
  }),
};

export const UTILITIES: Methods<GoogleAppsScript.Utilities.Utilities, null> = {
  getUuid: answer((session) => session.platform.uuid()),
  formatDate: answer((_session, _ref, args) => {
    const date = args[0];
    if (!isDateMark(date)) throw mismatch(args);
    return formatDate(date.$date, text(args, 1), text(args, 2));
  }),
  parseDate: answer((_session, _ref, args) => ({
    $date: parseDate(text(args, 0), text(args, 1), text(args, 2)),
  })),
  sleep: answer(
    (_session, _ref, args) =>
      new Promise((resolve) => setTimeout(() => resolve(undefined), number(args, 0))),
  ),
};

export const SESSION: Methods<GoogleAppsScript.Base.Session, null> = {
  // Without consent to know it, the platform answers with nothing.
  getActiveUser: answer(() => ({ $object: 'User', ref: null })),
  getEffectiveUser: answer(() => ({ $object: 'User', ref: null })),
  getScriptTimeZone: answer((session) => session.platform.addOn.timeZone),
  getActiveUserLocale: answer(() => 'en'),
  getTemporaryActiveUserKey: answer((session) => `window-${session.window}`),
};

export const USER: Methods<GoogleAppsScript.Base.User, null> = {
  getEmail: answer(() => ''),
};

function log(session: Session, _ref: null, args: readonly unknown[]) {
  session.platform.log(
    args.map((arg) => (typeof arg === 'string' ? arg : JSON.stringify(arg))).join(' '),
  );
}

export const CONSOLE: Methods<typeof console, null> = {
  log: answer(log),
  info: answer(log),
  warn: answer(log),
  error: answer(log),
};

export const LOGGER: Methods<GoogleAppsScript.Base.Logger, null> = { log: answer(log) };
