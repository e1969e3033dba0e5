import { readFileSync } from 'node:fs';
import { type Browser, chromium as driver, type Page } from 'playwright-core';
import { chromium } from '../../workbench/sheet/chromium.ts';

/** How a page's calls reach whatever stands behind it. */
export type Answering = (verb: string, payload: unknown) => Promise<unknown>;

export async function openBrowser(): Promise<Browser> {
  return driver.launch(await chromium());
}

/** Opens a built page alone, at the width of the platform's sidebar, with its calls going to `answering`. */
export async function openPanel(
  browser: Browser,
  file: string,
  answering: Answering,
  { width = 300, height = 900, extra = '', timers = 'none' as 'none' | 'asked' } = {},
): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height } });
  // The panel asks for running timers as it opens; only tests of timers count that call.
  await page.exposeFunction('answerCall', (verb: string, payload: unknown) =>
    verb === 'timersFor' && timers === 'none' ? NO_TIMERS : answering(verb, payload),
  );
  await page.addInitScript(RUNNER);
  const html = readFileSync(file, 'utf8') + extra;
  await page.route('http://panel.test/', (route) =>
    route.fulfill({ contentType: 'text/html; charset=utf-8', body: html }),
  );
  await page.goto('http://panel.test/');
  return page;
}

const NO_TIMERS = { kind: 'ok', timers: [], choices: [] };

/** The platform's page API, as far as the pages use it. */
const RUNNER = `
  const runner = (good, bad) => new Proxy({}, {
    get: (_target, name) => {
      if (name === 'withSuccessHandler') return (handler) => runner(handler, bad);
      if (name === 'withFailureHandler') return (handler) => runner(good, handler);
      return (payload) => {
        window.answerCall(name, payload).then(good, (error) => bad(new Error(error.message.replace(/^Error: /, ''))));
      };
    },
  });
  window.google = { script: { run: runner(() => {}, () => {}), host: { close() {} } } };
`;
