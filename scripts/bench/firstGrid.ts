import { chromium as playwright } from 'playwright-core';
import { openHost } from '../../workbench/host/openHost.ts';
import { fillBook } from '../../workbench/server/fillBook.ts';
import { freshPage, PAGE } from '../../workbench/server/freshBuilds.ts';
import { startServer } from '../../workbench/server/startServer.ts';
import { chromium } from '../../workbench/sheet/chromium.ts';

/** Time from asking for the page of the demo shop to its drawn grid, in a browser that has nothing cached [ms]. */
export async function firstGrid(): Promise<number> {
  const quiet = () => {};
  await freshPage(quiet);
  const host = await openHost({ dist: 'dist' });
  await fillBook(host, 'demo', quiet);
  const book = { name: 'Bench', keeps: 'memory' } as const;
  const server = await startServer({ host, page: PAGE, book, address: '127.0.0.1', port: 0 });
  const browser = await playwright.launch(await chromium());
  const page = await browser.newPage({ viewport: { width: 1280, height: 760 } });
  const start = performance.now();
  await page.goto(server.url);
  await page.waitForFunction(() => 'workbench' in window);
  const taken = performance.now() - start;
  await browser.close();
  await server.close();
  await host.close();
  return taken;
}
