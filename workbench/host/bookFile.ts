import { existsSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { HostState } from './hostState.ts';
import { type ReadBook, readWorkbookFile } from './xlsx/readWorkbookFile.ts';
import { writeWorkbookFile } from './xlsx/writeWorkbookFile.ts';

/** Pause after the last change before the file is written [ms]. */
const PAUSE = 400;

/** The .xlsx file a workbook lives in. */
export interface BookFile {
  /** The workbook in the file; undefined when there is no file yet. */
  read(unit: string): Promise<ReadBook | undefined>;
  /** Writes the file after changes from now on. */
  keep(state: HostState): Keeping;
}

interface Keeping {
  now(): Promise<void>;
  close(): Promise<void>;
}

export function bookFile(path: string): BookFile {
  const file = resolve(path);
  const name = basename(file).replace(/\.xlsx$/i, '');
  return {
    read: async (unit) =>
      existsSync(file) ? readWorkbookFile(await readFile(file), unit, name) : undefined,
    keep: (state) => keep(file, state),
  };
}

function keep(file: string, state: HostState): Keeping {
  let timer: NodeJS.Timeout | undefined;
  let changed = !existsSync(file);
  let writing: Promise<void> = Promise.resolve();

  async function write() {
    if (!changed) return;
    changed = false;
    await state.settled();
    const bytes = await writeWorkbookFile(state.engine, state.platformState());
    // A reader never sees half a file: it is complete before it gets its name.
    const draft = join(dirname(file), `.${basename(file)}.part`);
    await writeFile(draft, bytes);
    await rename(draft, file);
    state.emit({ kind: 'saved', file });
  }

  function now(): Promise<void> {
    clearTimeout(timer);
    // A save that failed does not stop the next one.
    writing = writing.catch(() => undefined).then(write);
    return writing;
  }

  state.onChange(() => {
    changed = true;
    clearTimeout(timer);
    timer = setTimeout(() => {
      now().catch((error: Error) => {
        changed = true;
        state.emit({ kind: 'progress', text: `${file} could not be saved: ${error.message}` });
      });
    }, PAUSE);
  });

  return { now, close: now };
}
