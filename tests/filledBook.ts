import { existsSync, mkdtempSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { openHost } from '../workbench/host/openHost.ts';
import { fillBook } from '../workbench/server/fillBook.ts';

/**
 * The file of a workbook that the built add-on laid out, and filled with the demo shop where nothing else is said, for
 * {@link openHost} to copy. The first test file that asks for it makes it for all of the run, because that takes seconds.
 * @returns path of an .xlsx that nobody writes to
 * @throws Error with the add-on's sentence when it fails
 */
export async function filledBook(fill: 'layout' | 'demo' = 'demo'): Promise<string> {
  const folder = inject('demoBooks');
  const file = join(folder, `${fill}.xlsx`);
  if (existsSync(file)) return file;
  // Two workers may make it at once: each in a folder of its own, and either is good.
  const book = join(mkdtempSync(join(folder, 'making-')), `${fill}.xlsx`);
  const host = await openHost({ dist: 'dist', timeZone: 'America/Denver', book });
  await fillBook(host, fill, () => {});
  await host.close();
  renameSync(book, file);
  return file;
}
