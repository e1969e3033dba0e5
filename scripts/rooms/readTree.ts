import { readFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { type SourceTree, sourceTree } from './sourceTree.ts';

const TOPS = ['shared', 'templates', 'src', 'sidebar', 'scripts', 'workbench', 'tests'];

/** The files of the project below a root, of every kind, without what is built or installed. */
export async function projectFiles(root: string): Promise<readonly string[]> {
  const lists = await Promise.all(
    TOPS.map(async (top) => {
      const entries = await readdir(join(root, top), { recursive: true, withFileTypes: true });
      return entries
        .filter((entry) => entry.isFile())
        .map((entry) => relative(root, join(entry.parentPath, entry.name)));
    }),
  );
  return lists.flat().sort();
}

/** Its TypeScript files, parsed. */
export function readTree(root: string, files: readonly string[]): SourceTree {
  const sources = files.filter((path) => path.endsWith('.ts'));
  return sourceTree(
    Object.fromEntries(sources.map((path) => [path, readFileSync(join(root, path), 'utf8')])),
  );
}
