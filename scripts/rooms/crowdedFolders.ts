import { posix } from 'node:path';
import type { SourceTree } from './sourceTree.ts';

/** Most files that stand flat in a folder. */
const MOST_FILES = 24;

/** Folders of more files than a newcomer reads through. */
export function crowdedFolders(paths: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const path of paths) {
    const folder = posix.dirname(path);
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  return [...counts]
    .filter(([, count]) => count > MOST_FILES)
    .map(([folder, count]) => `${folder} holds ${count} files`);
}

/** Names of `shared` that two files export: one name stands for one thing. */
export function namesTwice(tree: SourceTree): readonly string[] {
  const homes = new Map<string, string[]>();
  for (const { path, exports } of tree.values())
    if (path.startsWith('shared/'))
      for (const name of exports) homes.set(name, [...(homes.get(name) ?? []), path]);
  return [...homes]
    .filter(([, paths]) => paths.length > 1)
    .map(([name, paths]) => `${name} is exported by ${paths.join(' and ')}`);
}

/** Files whose names are their own: types, entries, tests, and the one that brings a library's packages together. */
const NAMED_APART = /^tests\/|Types\.ts$|main\.ts$|host\/univer\.ts$/;

/** Files that are named after nothing they export. */
export function strangeNames(tree: SourceTree): readonly string[] {
  return [...tree.values()]
    .filter(({ path, exports }) => exports.length > 0 && !NAMED_APART.test(path))
    .filter(({ path, exports }) => {
      const name = plain(posix.basename(path, '.ts'));
      return !exports.some((one) => plain(one) === name);
    })
    .map(({ path }) => path);
}

function plain(name: string): string {
  return name.replace(/_/g, '').toLowerCase();
}

/** Files outside tests that only one other file imports, and that file stands in another folder. */
export function farHelpers(tree: SourceTree): readonly string[] {
  const importers = new Map<string, string[]>();
  for (const { path, imports } of tree.values())
    if (!path.startsWith('tests/'))
      for (const { path: target } of imports)
        importers.set(target, [...(importers.get(target) ?? []), path]);
  return [...importers]
    .filter(
      ([path, users]) =>
        tree.has(path) &&
        new Set(users).size === 1 &&
        posix.dirname(users[0] ?? '') !== posix.dirname(path),
    )
    .map(([path]) => path);
}
