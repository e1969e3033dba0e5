import { mkdir, mkdtemp, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isStale } from '../../../workbench/server/isStale.ts';

let folder: string;
const at = (name: string) => join(folder, name);

async function file(name: string, seconds: number) {
  await writeFile(at(name), '');
  await utimes(at(name), seconds, seconds);
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stale-'));
  await mkdir(at('src/deep'), { recursive: true });
  await file('src/deep/a.ts', 1000);
  await file('built.js', 2000);
  for (const name of ['src', 'src/deep']) await utimes(at(name), 1000, 1000);
});
afterAll(() => rm(folder, { recursive: true }));

describe('isStale', () => {
  test('a missing file is stale', async () => {
    expect(await isStale(at('none.js'), [at('src')])).toBe(true);
  });

  test('a file newer than all its sources is fresh', async () => {
    expect(await isStale(at('built.js'), [at('src')])).toBe(false);
  });

  test('a newer source, however deep, makes it stale', async () => {
    await file('src/deep/a.ts', 3000);
    expect(await isStale(at('built.js'), [at('src')])).toBe(true);
    await file('src/deep/a.ts', 1000);
  });

  test('a removed source makes it stale, for its folder changed', async () => {
    await utimes(at('src/deep'), 3000, 3000);
    expect(await isStale(at('built.js'), [at('src')])).toBe(true);
    await utimes(at('src/deep'), 1000, 1000);
  });
});
