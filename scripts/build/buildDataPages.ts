import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bookNotes } from '../../shared/book/layout/bookNotes.ts';
import { demoShop } from '../../templates/demoShop/demoShop.ts';

/** Writes what only a menu item needs as JSON into HTML files, the one kind of data file the platform takes. */
export async function buildDataPages(folder: string): Promise<void> {
  const pages = { DemoShop: demoShop(), BookNotes: bookNotes() };
  for (const [name, data] of Object.entries(pages))
    await writeFile(join(folder, `${name}.html`), JSON.stringify(data).replace(/</g, '\\u003c'));
}
