import type { TaskGroups } from './taskGroups.ts';

/** All groups, each after those it waits for, the one with the smallest key of those that may come first. */
export function activityListByKey(
  { before, after }: TaskGroups,
  keys: readonly number[],
): number[] {
  const waits = before.map(({ length }) => length);
  const ready = waits.flatMap((left, group) => (left === 0 ? [group] : []));
  const list: number[] = [];
  while (ready.length > 0) {
    let place = 0;
    for (let other = 1; other < ready.length; other += 1)
      if (keyOf(keys, ready[other]) < keyOf(keys, ready[place])) place = other;
    const [group = 0] = ready.splice(place, 1);
    list.push(group);
    for (const next of after[group] ?? []) {
      const left = (waits[next] ?? 0) - 1;
      waits[next] = left;
      if (left === 0) ready.push(next);
    }
  }
  return list;
}

function keyOf(keys: readonly number[], group: number | undefined): number {
  return keys[group ?? 0] ?? 0;
}

/** Moves the group at one place as near to another as those it waits for, and those that wait for it, allow. */
export function shiftedGroup(
  { before, after }: TaskGroups,
  list: number[],
  { from, to, fixed }: { readonly from: number; readonly to: number; readonly fixed: number },
): void {
  const group = list[from] ?? 0;
  let place = from;
  if (to < from) {
    const earlier = before[group] ?? [];
    while (place > Math.max(to, fixed) && !earlier.includes(list[place - 1] ?? -1)) place -= 1;
  } else {
    const later = after[group] ?? [];
    while (place < Math.min(to, list.length - 1) && !later.includes(list[place + 1] ?? -1))
      place += 1;
  }
  list.splice(from, 1);
  list.splice(place, 0, group);
}
