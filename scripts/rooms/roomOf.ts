/** The room that a path of the tree stands in: a folder of `shared`, else its top folder. */
export function roomOf(path: string): string {
  const [top = '', second = ''] = path.split('/');
  return top === 'shared' && path.split('/').length > 2 ? `shared/${second}` : top;
}

/** Whether a room is the named one, or one of `shared` where all of it is named. */
export function isRoom(room: string, named: string): boolean {
  return room === named || (named === 'shared' && room.startsWith('shared/'));
}
