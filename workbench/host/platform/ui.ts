import type { MenuItem } from '../Host.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { answerMethod, type Methods, type Session, uiMethod, withSelf } from './session.ts';
import {
  integerArgument,
  objectArgument,
  optionalTextArgument,
  textArgument,
} from './textArgument.ts';

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
  createHtmlOutput: answerMethod((_session, _ref, args) =>
    output(optionalTextArgument(args, 0) ?? ''),
  ),
  createHtmlOutputFromFile: answerMethod((session, _ref, args) => {
    const page = session.platform.addOn.pages[textArgument(args, 0).replace(/\.html$/, '')];
    if (page === undefined)
      throw new Error(`No HTML file named ${textArgument(args, 0)} was found.`);
    return output(page);
  }),
};

export const HTML_OUTPUT: Methods<GoogleAppsScript.HTML.HtmlOutput, HtmlRef> = {
  setTitle: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, title: textArgument(args, 0) }, SELF),
  ),
  setWidth: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, width: integerArgument(args, 0) }, SELF),
  ),
  setHeight: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, height: integerArgument(args, 0) }, SELF),
  ),
  setContent: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, html: textArgument(args, 0) }, SELF),
  ),
  append: answerMethod((_session, ref, args) =>
    withSelf({ ...ref, html: ref.html + textArgument(args, 0) }, SELF),
  ),
  addMetaTag: answerMethod(() => SELF),
  getContent: answerMethod((_session, ref) => ref.html),
  getTitle: answerMethod((_session, ref) => ref.title),
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
  createMenu: answerMethod((_session, _ref, args) => newMenu(textArgument(args, 0))),
  createAddonMenu: answerMethod(() => newMenu('Poursmith')),
  alert: uiMethod((session, _ref, args) => {
    const { platform } = session;
    // A script that waits for its user loses its locks.
    if (platform.lock === session.key) platform.lock = undefined;
    return platform.ask(session.window, alertText(args));
  }),
  showSidebar: uiMethod((session, _ref, args) => {
    const { html, title } = objectArgument<HtmlRef>(args, 0, 'HtmlOutput');
    session.platform.show(session.window, { kind: 'sidebar', title, html });
  }),
  showModalDialog: uiMethod(dialog),
  showModelessDialog: uiMethod(dialog),
};

function dialog(session: Session, _ref: null, args: readonly unknown[]) {
  const { html, width, height } = objectArgument<HtmlRef>(args, 0, 'HtmlOutput');
  session.platform.show(session.window, {
    kind: 'dialog',
    title: textArgument(args, 1),
    html,
    width,
    height,
  });
}

export const MENU: Methods<GoogleAppsScript.Base.Menu, MenuRef> = {
  addItem: answerMethod((_session, ref, args) => {
    const item = { label: textArgument(args, 0), run: textArgument(args, 1) };
    return withSelf({ ...ref, items: [...ref.items, item] }, SELF);
  }),
  addSeparator: answerMethod((_session, ref) =>
    withSelf({ ...ref, items: [...ref.items, { label: '' }] }, SELF),
  ),
  addToUi: answerMethod((session, ref) => session.platform.addMenu(ref.title, ref.items)),
};
