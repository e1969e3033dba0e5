import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { buildCode } from './buildCode.ts';

/** Longest line [characters]: the platform's editor is slow with longer ones. */
const LONGEST_LINE = 500;

/** Where the bundler looks for the next place to break a line [characters]; texts and some lists it never breaks. */
const BREAK_AFTER = 120;

/** A part of a packed page, short enough for its line with what stands around it. */
const PART = LONGEST_LINE - 20;

/**
 * The add-on as one script to paste: the same code, with every page and data file of a built folder packed inside. A page is unpacked
 * when it is opened and not before, so that loading the script for a cell takes no longer.
 * @param folder - the built add-on
 */
export async function buildOneFile(folder: string): Promise<string> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.html')).sort();
  const pages = await Promise.all(
    names.map(async (name) =>
      packedPage(basename(name, '.html'), await readFile(join(folder, name))),
    ),
  );
  const code = await buildCode(BREAK_AFTER);
  const whole = `${code}\nvar PoursmithPages_ = {\n${pages.join('')}};\n`;
  const longest = Math.max(...whole.split('\n').map((line) => line.length));
  if (longest > LONGEST_LINE)
    throw new Error(
      `the one file: a line must be at most ${LONGEST_LINE} characters, got ${longest}`,
    );
  return whole;
}

function packedPage(name: string, text: Buffer): string {
  const packed = gzipSync(text, { level: 9 }).toString('base64');
  const parts = packed.match(new RegExp(`.{1,${PART}}`, 'g')) ?? [];
  return `${name}: function () { return [\n${parts.map((part) => `'${part}',\n`).join('')}]; },\n`;
}
