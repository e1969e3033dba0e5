import { copyFile } from 'node:fs/promises';
import { join } from 'node:path';
import { buildCode } from './buildCode.ts';
import { buildDataPages } from './buildDataPages.ts';
import { buildPage } from './buildPage.ts';

/** Builds every file that is installed on the platform into an existing folder. */
export async function buildAddOn(folder: string): Promise<void> {
  await copyFile('appsscript.json', join(folder, 'appsscript.json'));
  await buildCode(join(folder, 'Code.js'));
  await buildDataPages(folder);
  for (const page of [
    'Sidebar.html',
    'RunSheet.html',
    'Heat.html',
    'Quality.html',
    'Causes.html',
    'PourDay.html',
    'Purchases.html',
    'Quote.html',
  ])
    await buildPage(join('sidebar', page), join(folder, page));
}
