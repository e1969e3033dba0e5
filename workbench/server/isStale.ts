import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** Whether a built file is missing or older than one of its sources (files or folders). */
export async function isStale(built: string, sources: readonly string[]): Promise<boolean> {
  const made = await changed(built);
  if (made === undefined) return true;
  const times = await Promise.all(sources.map(newest));
  return Math.max(...times) > made;
}

async function newest(path: string): Promise<number> {
  const found = await stat(path);
  if (!found.isDirectory()) return found.mtimeMs;
  const names = await readdir(path);
  const times = await Promise.all(names.map((name) => newest(join(path, name))));
  return Math.max(found.mtimeMs, ...times);
}

async function changed(path: string): Promise<number | undefined> {
  try {
    return (await stat(path)).mtimeMs;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}
