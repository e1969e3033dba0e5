import { isRoom, roomOf } from './roomOf.ts';
import type { Room } from './rooms.ts';
import type { SourceTree } from './sourceTree.ts';

/** Top folders whose code runs without Node. */
const WITHOUT_NODE = ['shared', 'templates', 'src', 'sidebar'];

/**
 * Every import that the rooms do not allow, every arrow that they allow and nobody uses, and arrows to a room further down, in
 * sentences.
 */
export function brokenArrows(tree: SourceTree, rooms: readonly Room[]): readonly string[] {
  const declared = new Map(rooms.map((one) => [one.room, one]));
  const used = new Set<string>();
  const broken: string[] = [];
  for (const { path, imports, packages } of tree.values()) {
    const room = roomOf(path);
    const allowed = declared.get(room)?.imports;
    if (allowed === undefined) {
      broken.push(`${path}: ${room} is not a room of scripts/rooms/rooms.ts`);
      continue;
    }
    for (const { path: target, line } of imports) {
      const to = roomOf(target);
      if (to === room) continue;
      const arrow = allowed.find((one) => isRoom(to, one));
      if (arrow === undefined) broken.push(`${path}:${line}: ${room} may not import ${to}`);
      else used.add(`${room} ${arrow}`);
    }
    if (WITHOUT_NODE.includes(room.split('/')[0] ?? ''))
      for (const { name, line } of packages)
        if (name.startsWith('node:'))
          broken.push(`${path}:${line}: ${room} may not import ${name}`);
  }
  for (const { room, imports } of rooms)
    for (const one of imports)
      if (!used.has(`${room} ${one}`))
        broken.push(`${room} imports nothing of ${one}: take it off its row`);
  return [...broken, ...downwards(rooms)];
}

/** Arrows of the table itself that point to a row further down. */
function downwards(rooms: readonly Room[]): readonly string[] {
  const names = rooms.map(({ room }) => room);
  return rooms.flatMap(({ room, imports }, index) =>
    imports
      .filter((one) => !names.slice(0, index).some((above) => isRoom(above, one)))
      .map((one) => `${room} may not import ${one}, which stands below it`),
  );
}
