import { mkdir, rm, stat } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';

/** Time between two looks at the lock [ms]. */
const LOOK_AGAIN = 100;

/** A lock older than this was left by a run that was ended [ms]. */
const LEFT_BEHIND = 120_000;

/** Runs work that no other process of this machine does at the same time, with a folder as the lock. */
export async function oneAtATime<Result>(
  lock: string,
  work: () => Promise<Result>,
): Promise<Result> {
  while (!(await taken(lock))) {
    if (await isLeftBehind(lock)) await rm(lock, { recursive: true, force: true });
    else await pause(LOOK_AGAIN);
  }
  try {
    return await work();
  } finally {
    await rm(lock, { recursive: true, force: true });
  }
}

async function taken(lock: string): Promise<boolean> {
  try {
    await mkdir(lock);
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
}

async function isLeftBehind(lock: string): Promise<boolean> {
  try {
    return Date.now() - (await stat(lock)).mtimeMs > LEFT_BEHIND;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return false;
    throw error;
  }
}
