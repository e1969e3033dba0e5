import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium as driver, type Page } from 'playwright-core';
import { afterAll, beforeAll, onTestFinished } from 'vitest';
import { chromium } from '../../workbench/sheet/chromium.ts';
import { type DemoBook, openDemoBook } from '../src/openDemoBook.ts';
import { openPage, type PageOptions } from './openPage.ts';

/** How a page's calls reach whatever stands behind it. */
type Answering = (verb: string, payload: unknown) => Promise<unknown>;

interface PanelOptions {
  /** Answers that stand in for those of the book; an error is thrown. */
  readonly answers?: Readonly<Record<string, unknown>>;
  /** Each fails the next call before it is made; a test may add to it. */
  readonly failing?: string[];
  /** Each loses the answer to the next call, which is made; a test may add to it. */
  readonly losing?: string[];
  readonly width?: number;
  readonly sheet?: string;
  readonly range?: string;
  /** The panel asks for running timers as it opens; only tests of timers let that call through. */
  readonly timers?: 'none' | 'asked';
  /** Button that is pressed as soon as the panel is there, by its key. */
  readonly open?: string;
}

/** The panel with its calls, in order, and what its status says once it is idle. */
interface Panel {
  readonly page: Page;
  readonly calls: readonly { readonly verb: string; readonly payload: unknown }[];
  readonly verbs: () => readonly string[];
  readonly status: string;
}

interface Bench {
  /** Open while the tests run. */
  readonly book: DemoBook;
  readonly openPanel: (options?: PanelOptions) => Promise<Panel>;
  /** A built page by its file's name, its calls going to the book where nothing else is said. */
  readonly openBuilt: (file: string, options: PageOptions, answering?: Answering) => Promise<Page>;
  /** The dialog as the add-on opened it last. */
  readonly openDialog: (answering?: Answering, width?: number) => Promise<Page>;
}

/**
 * The built add-on with the demo book and a browser: opened before the tests of a file, closed after them.
 * @param range - cell of *Orders* that is selected
 * @param now - the clock of the book
 */
export function bench({
  range = 'A2',
  now,
}: {
  readonly range?: string;
  readonly now?: () => Date;
} = {}): Bench {
  let opened: { readonly book: DemoBook; readonly browser: Browser };
  beforeAll(async () => {
    const book = await openDemoBook(now ? { now } : {});
    opened = { book, browser: await driver.launch(await chromium()) };
  }, 180_000);
  afterAll(async () => {
    await opened.browser.close();
    await opened.book.host.close();
  });
  const book: DemoBook = {
    get host() {
      return opened.book.host;
    },
    get shown() {
      return opened.book.shown;
    },
    call: (...call) => opened.book.call(...call),
    ask: (...question) => opened.book.ask(...question),
  };
  const answered = async (verb: string, payload: unknown, from = { range }): Promise<unknown> => {
    const result = await book.call(verb, payload, from);
    if (result.kind === 'failure') throw new Error(result.message);
    return result.value;
  };
  const open = async (html: string, answering: Answering, options: PageOptions) => {
    const page = await openPage(opened.browser, html, answering, options);
    onTestFinished(() => page.close());
    return page;
  };
  const builtPage = (file: string) => readFileSync(join('dist', file), 'utf8');
  return {
    book,
    openPanel: async (options = {}) => {
      const { answers = {}, failing = [], losing = [], timers = 'none' } = options;
      const calls: { readonly verb: string; readonly payload: unknown }[] = [];
      const from = { sheet: options.sheet ?? 'Orders', range: options.range ?? range };
      const answering: Answering = async (verb, payload) => {
        if (verb === 'timersFor' && timers === 'none') return NO_TIMERS;
        calls.push({ verb, payload });
        throwNext(failing);
        const answer = await (verb in answers ? answers[verb] : answered(verb, payload, from));
        throwNext(losing);
        if (answer instanceof Error) throw answer;
        return answer;
      };
      const { width = 300 } = options;
      const page = await open(builtPage('Sidebar.html'), answering, { width, height: 900 });
      const verbs = () => calls.map(({ verb }) => verb);
      if (options.open === undefined) return { page, calls, verbs, status: '' };
      await page.focus(`#${options.open}`);
      await page.keyboard.press('Enter');
      return { page, calls, verbs, status: await idle(page) };
    },
    openBuilt: (file, options, answering = answered) => open(builtPage(file), answering, options),
    openDialog: (answering = answered, width = 860) => {
      const shown = opened.book.shown.at(-1);
      const html = shown?.kind === 'dialog' ? shown.html : '';
      return open(html, answering, { width, height: 640 });
    },
  };
}

const NO_TIMERS = { kind: 'ok', timers: [], choices: [] };

function throwNext(texts: string[]): void {
  const text = texts.shift();
  if (text !== undefined) throw new Error(text);
}

/** Waits until the page is not busy; what its status says then. */
export async function idle(page: Page): Promise<string> {
  await page.waitForSelector('#view[aria-busy="false"]');
  return (await page.textContent('#status')) ?? '';
}
