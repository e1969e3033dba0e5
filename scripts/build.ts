import { mkdir, mkdtemp, readdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { buildAddOn } from './build/buildAddOn.ts';
import { buildOneFile } from './build/buildOneFile.ts';

/** Most that the script may weigh [bytes]: every sheet-function call loads all of it. */
const HEAVIEST = 510_000;

// Built beside dist/ and moved in file by file, so that a running workbench never finds one missing.
const fresh = await mkdtemp('dist-');
try {
  await buildAddOn(fresh);
  const { size } = await stat(join(fresh, 'Code.js'));
  if (size > HEAVIEST)
    throw new Error(`dist/Code.js must be at most ${HEAVIEST} bytes, got ${size}`);
  await mkdir('dist', { recursive: true });
  const files = await readdir(fresh);
  for (const file of await readdir('dist')) if (!files.includes(file)) await rm(join('dist', file));
  for (const file of files) await rename(join(fresh, file), join('dist', file));
  const one = await buildOneFile('dist');
  await mkdir('dist-one-file', { recursive: true });
  await writeFile('dist-one-file/Poursmith.js', one);
  process.stdout.write(
    `dist/Code.js ${Math.round(size / 1000)} kB, dist-one-file/Poursmith.js ${Math.round(one.length / 1000)} kB\n`,
  );
} finally {
  await rm(fresh, { recursive: true, force: true });
}
