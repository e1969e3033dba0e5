import { copyFile, mkdir, rm, stat } from 'node:fs/promises';
import { buildCode } from './build/buildCode.ts';
import { buildPage } from './build/buildPage.ts';

/** Most that the script may weigh [bytes]: every sheet-function call loads all of it. */
const HEAVIEST = 150_000;

await rm('dist', { recursive: true, force: true });
await mkdir('dist');
await copyFile('appsscript.json', 'dist/appsscript.json');
await buildCode('dist/Code.js');
await buildPage('sidebar/Sidebar.html', 'dist/Sidebar.html');
await buildPage('sidebar/RunSheet.html', 'dist/RunSheet.html');
const { size } = await stat('dist/Code.js');
if (size > HEAVIEST) throw new Error(`dist/Code.js must be at most ${HEAVIEST} bytes, got ${size}`);
process.stdout.write(`dist/Code.js ${Math.round(size / 1000)} kB\n`);
