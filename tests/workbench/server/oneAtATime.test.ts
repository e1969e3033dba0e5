import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { oneAtATime } from '../../../workbench/server/oneAtATime.ts';

let folder: string;
const lock = () => join(folder, 'lock');

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lock-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('oneAtATime', () => {
  test('never lets two run together', async () => {
    let [inside, most] = [0, 0];
    const work = async () => {
      inside += 1;
      most = Math.max(most, inside);
      await pause(20);
      inside -= 1;
    };
    await Promise.all([1, 2, 3].map(() => oneAtATime(lock(), work)));
    expect(most).toBe(1);
  });

  test('gives the lock back when the work fails', async () => {
    const failing = oneAtATime(lock(), () => Promise.reject(new Error('broken')));
    await expect(failing).rejects.toThrow(new Error('broken'));
    expect(existsSync(lock())).toBe(false);
  });
});
