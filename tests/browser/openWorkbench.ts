import {
  type Browser,
  type BrowserContext,
  type Page,
  chromium as playwright,
} from 'playwright-core';
import type { Host, HostOptions } from '../../workbench/host/Host.ts';
import { openHost } from '../../workbench/host/openHost.ts';
import type { TestHook } from '../../workbench/page/testHook.ts';
import { freshPage, PAGE } from '../../workbench/server/freshBuilds.ts';
import { startServer } from '../../workbench/server/startServer.ts';
import { chromium } from '../../workbench/sheet/chromium.ts';
import { filledBook } from '../filledBook.ts';

declare global {
  interface Window {
    workbench?: TestHook;
  }
}

/** A workbench in memory with a browser to look at it. */
export interface OpenWorkbench {
  readonly host: Host;
  readonly url: string;
  readonly context: BrowserContext;
  /** A further window, with its grid drawn. */
  window(): Promise<Page>;
  close(): Promise<void>;
}

/** The tiny add-on these tests bring along. */
export const FIXTURE = 'tests/browser/fixture';

/** Long enough for a browser start and a first grid on a busy machine [ms]. */
export const PATIENCE = 120_000;

/** The built add-on with the demo shop. */
export async function openDemoWorkbench(): Promise<OpenWorkbench> {
  return openWorkbench({ dist: 'dist', copyOf: await filledBook() });
}

export async function openWorkbench(
  options: Pick<HostOptions, 'dist' | 'copyOf'>,
  prepare: (host: Host) => Promise<void> = () => Promise.resolve(),
): Promise<OpenWorkbench> {
  await freshPage(() => {});
  const host = await openHost({ ...options, timeZone: 'Etc/UTC' });
  await prepare(host);
  await host.settled();
  const server = await startServer({
    host,
    page: PAGE,
    book: { name: 'Test book', keeps: 'memory' },
    address: '127.0.0.1',
    port: 0,
  });
  const browser: Browser = await playwright.launch(await chromium());
  const context = await browser.newContext({ viewport: { width: 1280, height: 760 } });
  context.setDefaultTimeout(PATIENCE / 4);
  return {
    host,
    url: server.url,
    context,
    window: async () => {
      const page = await context.newPage();
      await page.goto(server.url);
      await drawn(page);
      return page;
    },
    close: async () => {
      await browser.close();
      await server.close();
      await host.close();
    },
  };
}

/** Waits until the grid is drawn and the panel has opened itself. */
export async function drawn(page: Page): Promise<void> {
  await page.waitForFunction(() => window.workbench?.settled() === true);
}

/** Waits until every change is calculated and no run is going on. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => window.workbench?.settled() === true);
}

/** Text the grid shows in a cell. */
export function shown(page: Page, sheet: string, cell: string): Promise<string | undefined> {
  return page.evaluate(([name = '', at = '']) => window.workbench?.value(name, at), [sheet, cell]);
}

export function select(page: Page, sheet: string, range: string): Promise<void> {
  return page.evaluate(
    ([name = '', at = '']) => window.workbench?.select(name, at),
    [sheet, range],
  );
}

/** Types into a cell with the keyboard, as a person does. */
export async function type(page: Page, sheet: string, cell: string, text: string): Promise<void> {
  await select(page, sheet, cell);
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}
