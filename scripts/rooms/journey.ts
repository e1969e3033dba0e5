import { roomOf } from './roomOf.ts';
import type { SourceTree } from './sourceTree.ts';

/** Every file that can be reached from some files through imports, themselves included, by room. */
export function journey(
  tree: SourceTree,
  from: readonly string[],
): ReadonlyMap<string, readonly string[]> {
  const reached = new Set<string>();
  const open = [...from];
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    const file = tree.get(path);
    if (file === undefined || reached.has(path)) continue;
    reached.add(path);
    open.push(...file.imports.map((one) => one.path));
  }
  const rooms = new Map<string, string[]>();
  for (const path of [...reached].sort()) {
    const room = roomOf(path);
    rooms.set(room, [...(rooms.get(room) ?? []), path]);
  }
  return rooms;
}
