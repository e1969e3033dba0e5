import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { buildWorkbenchPage } from './buildWorkbenchPage.ts';
import { isStale } from './isStale.ts';
import { oneAtATime } from './oneAtATime.ts';

const run = promisify(execFile);

/** The built add-on, exactly as it goes to the shared sheet. */
export const ADD_ON = 'dist';

/** The built page of the workbench. */
export const PAGE = 'dist-workbench';

/** Several test files and a running workbench may ask at the same time. */
const LOCK = 'node_modules/.workbench-build';

const ADD_ON_SOURCES = ['appsscript.json', 'shared', 'src', 'sidebar', 'templates', 'scripts'];
const PAGE_SOURCES = [
  'workbench/page',
  'workbench/server/buildWorkbenchPage.ts',
  'package-lock.json',
];

/**
 * Builds the add-on and the page when they are missing or older than their sources.
 *
 * @param say - tells the person what is going on
 * @throws Error with the build's own words when it fails
 */
export async function freshBuilds(say: (text: string) => void): Promise<void> {
  await oneAtATime(LOCK, async () => {
    if (!(await isStale(`${ADD_ON}/Code.js`, ADD_ON_SOURCES))) return;
    say('Building the add-on…');
    await run(process.execPath, ['--import', 'tsx', 'scripts/build.ts']);
  });
  await freshPage(say);
}

/** Builds the page alone when it is missing or older than its sources. */
export async function freshPage(say: (text: string) => void): Promise<void> {
  await oneAtATime(LOCK, async () => {
    if (!(await isStale(`${PAGE}/index.html`, PAGE_SOURCES))) return;
    say('Building the page…');
    await buildWorkbenchPage(PAGE);
  });
}
