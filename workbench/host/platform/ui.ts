import type { MenuItem } from '../Host.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { optionalText, pointed, text, whole } from './optionalText.ts';
import { answer, type Methods, type Session, ui, withSelf } from './session.ts';

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
  alert: ui((session, _ref, args) => {
    const { platform } = session;
    // A script that waits for its user loses its locks.
    if (platform.lock === session.key) platform.lock = undefined;
    return platform.ask(session.window, alertText(args));
  }),
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
