import { copyFile, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { buildCode } from './buildCode.ts';
import { buildDataPages } from './buildDataPages.ts';
import { buildPage } from './buildPage.ts';

const PAGES = [
  'sidebar/panel/Sidebar.html',
  'sidebar/dialogs/RunSheet.html',
  'sidebar/dialogs/Heat.html',
  'sidebar/dialogs/Quality.html',
  'sidebar/dialogs/Causes.html',
  'sidebar/dialogs/PourDay.html',
  'sidebar/dialogs/Purchases.html',
  'sidebar/dialogs/Quote.html',
];

/** Builds every file that is installed on the platform into an existing folder. */
export async function buildAddOn(folder: string): Promise<void> {
  await copyFile('appsscript.json', join(folder, 'appsscript.json'));
  await writeFile(join(folder, 'Code.js'), await buildCode());
  await buildDataPages(folder);
  for (const page of PAGES) await buildPage(page, join(folder, basename(page)));
}
