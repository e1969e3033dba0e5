import { isDateMark } from '../cellContent.ts';
import { formatDate, parseDate } from '../parseDate.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { answerMethod, type Methods, type Session, writeMethod } from './session.ts';
import { numberArgument, signatureError, textArgument } from './textArgument.ts';

export const LOCK_SERVICE: Methods<GoogleAppsScript.Lock.LockService, null> = {
  getDocumentLock: answerMethod(() => ({ $object: 'Lock', ref: null })),
  getScriptLock: answerMethod(() => ({ $object: 'Lock', ref: null })),
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
  tryLock: writeMethod((session, _ref, args) => acquire(session, numberArgument(args, 0))),
  waitLock: writeMethod(async (session, _ref, args) => {
    if (await acquire(session, numberArgument(args, 0))) return;
    throw new Error('Lock timeout: another process was holding the lock for too long.');
  }),
  hasLock: answerMethod((session) => session.platform.lock === session.key),
  releaseLock: answerMethod((session) => {
    if (session.platform.lock === session.key) session.platform.lock = undefined;
  }),
};

/** Limits of the platform's store of properties [characters]. */
const PROPERTY_LIMIT = 9 * 1024;
const STORE_LIMIT = 500 * 1024;

export const PROPERTIES_SERVICE: Methods<GoogleAppsScript.Properties.PropertiesService, null> = {
  getDocumentProperties: answerMethod(() => ({ $object: 'Properties', ref: 'document' })),
  getUserProperties: answerMethod(() => ({ $object: 'Properties', ref: 'user' })),
  getScriptProperties: answerMethod(() => ({ $object: 'Properties', ref: 'script' })),
};

function storeOf(session: Session, store: string): Readonly<Record<string, string>> {
  const { properties } = session.platform.state();
  const prefix = `${store}:`;
  return Object.fromEntries(
    Object.entries(properties)
      .filter(([key]) => key.startsWith(prefix))
      .map(([key, value]) => [key.slice(prefix.length), value]),
  );
}

function setProperty(session: Session, store: string, args: readonly unknown[]) {
  return keep(session, store, { [textArgument(args, 0)]: textArgument(args, 1) });
}

/** All of them or, past a limit, none. */
function keep(session: Session, store: string, values: Readonly<Record<string, string>>) {
  const { properties } = session.platform.state();
  const changed = { ...properties };
  for (const [key, value] of Object.entries(values)) {
    if (value.length > PROPERTY_LIMIT) throw new Error('Argument too large: value');
    changed[`${store}:${key}`] = value;
  }
  if (JSON.stringify(changed).length > STORE_LIMIT) {
    throw new Error(
      'You have exceeded the property storage quota. Please remove some properties and try again.',
    );
  }
  session.platform.change({ properties: changed });
  return SELF;
}

export const PROPERTIES: Methods<GoogleAppsScript.Properties.Properties, string> = {
  getProperty: answerMethod(
    (session, ref, args) => storeOf(session, ref)[textArgument(args, 0)] ?? null,
  ),
  getProperties: answerMethod(storeOf),
  getKeys: answerMethod((session, ref) => Object.keys(storeOf(session, ref))),
  setProperty: writeMethod(setProperty),
  setProperties: writeMethod((session, ref, args) => {
    const [values, others] = args;
    if (typeof values !== 'object' || values === null || (others !== undefined && others !== null))
      throw signatureError(args);
    const entries = Object.entries(values).map(([key, value]) => [key, String(value)]);
    return keep(session, ref, Object.fromEntries(entries));
  }),
  deleteProperty: writeMethod((session, ref, args) => {
    const { [`${ref}:${textArgument(args, 0)}`]: _gone, ...properties } =
      session.platform.state().properties;
    session.platform.change({ properties });
    return SELF;
  }),
};

export const UTILITIES: Methods<GoogleAppsScript.Utilities.Utilities, null> = {
  getUuid: answerMethod((session) => session.platform.uuid()),
  formatDate: answerMethod((_session, _ref, args) => {
    const date = args[0];
    if (!isDateMark(date)) throw signatureError(args);
    return formatDate(date.$date, textArgument(args, 1), textArgument(args, 2));
  }),
  parseDate: answerMethod((_session, _ref, args) => ({
    $date: parseDate(textArgument(args, 0), textArgument(args, 1), textArgument(args, 2)),
  })),
  sleep: answerMethod(
    (_session, _ref, args) =>
      new Promise((resolve) => setTimeout(() => resolve(undefined), numberArgument(args, 0))),
  ),
};

export const SESSION: Methods<GoogleAppsScript.Base.Session, null> = {
  // Without consent to know it, the platform answers with nothing.
  getActiveUser: answerMethod(() => ({ $object: 'User', ref: null })),
  getEffectiveUser: answerMethod(() => ({ $object: 'User', ref: null })),
  getScriptTimeZone: answerMethod((session) => session.platform.addOn.timeZone),
  getActiveUserLocale: answerMethod(() => 'en'),
  getTemporaryActiveUserKey: answerMethod((session) => `window-${session.window}`),
};

export const USER: Methods<GoogleAppsScript.Base.User, null> = {
  getEmail: answerMethod(({ platform }) => platform.email()),
};

function log(session: Session, _ref: null, args: readonly unknown[]) {
  session.platform.log(
    args.map((arg) => (typeof arg === 'string' ? arg : JSON.stringify(arg))).join(' '),
  );
}

export const CONSOLE: Methods<typeof console, null> = {
  log: answerMethod(log),
  info: answerMethod(log),
  warn: answerMethod(log),
  error: answerMethod(log),
};

export const LOGGER: Methods<GoogleAppsScript.Base.Logger, null> = { log: answerMethod(log) };
