import type { Browser, Page } from 'playwright-core';

/** How large the page is, and what the dialog was opened for. */
export interface PageOptions {
  readonly width: number;
  readonly height?: number;
  readonly request?: unknown;
}

/** Opens a page alone, with its calls going to `answering`. */
export async function openPage(
  browser: Browser,
  html: string,
  answering: (verb: string, payload: unknown) => Promise<unknown>,
  { width, height = 900, request }: PageOptions,
): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.exposeFunction('answerCall', answering);
  await page.addInitScript(RUNNER);
  const body = request === undefined ? html : html + requestOf(request);
  await page.route('http://panel.test/', (route) =>
    route.fulfill({ contentType: 'text/html; charset=utf-8', body }),
  );
  await page.goto('http://panel.test/');
  return page;
}

/** As the add-on writes it into the page of a dialog. */
function requestOf(request: unknown): string {
  const data = encodeURIComponent(JSON.stringify(request));
  return `<div id="request" hidden data-request="${data}"></div>`;
}

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
