import type { ActivityNetwork, HeldSpan } from './activityNetwork.ts';
import type { HeadsAndTails } from './headsAndTails.ts';
import { earliestFit } from './partialSchedule.ts';
import type { TaskGroups } from './taskGroups.ts';

/**
 * The soonest that holds of a resource which bears one of them at a time can all be over, hours counted: one after the other, each as
 * short as the shortest, begun when its first task can begin and ended when its last can end.
 * end = next fit of the last task after (next fit of the first task after the end before + least span); + shortest tail.
 * Holds on a resource that bears two are left out.
 */
export function disjunctiveHoldsBound(
  network: ActivityNetwork,
  { spans }: TaskGroups,
  { heads, tails }: HeadsAndTails,
): number {
  let bound = 0;
  network.open.forEach((profile, resource) => {
    const capacity = Math.max(...profile.free);
    const turns = network.holds.flatMap((hold, place) =>
      takesMost(hold, resource, capacity) ? [{ hold, span: spans[place] ?? 0 }] : [],
    );
    const [one] = turns;
    if (one === undefined) return;
    const span = Math.min(...turns.map((turn) => turn.span));
    let end = Math.min(...turns.map(({ hold }) => heads[hold.first] ?? 0));
    for (let turn = 0; turn < turns.length; turn += 1)
      end = Math.min(...turns.map(({ hold }) => endOfTurn(network, hold, end, span)));
    bound = Math.max(bound, end + Math.min(...turns.map(({ hold }) => tails[hold.last] ?? 0)));
  });
  return bound;
}

function takesMost({ modes }: HeldSpan, resource: number, capacity: number): boolean {
  return modes.every((mode) =>
    mode.some((taken) => taken.resource === resource && 2 * taken.amount > capacity),
  );
}

function endOfTurn(
  { open, uses, durations }: ActivityNetwork,
  { first, last }: HeldSpan,
  after: number,
  span: number,
): number {
  const start = earliestFit(open, uses[first] ?? [], after, durations[first] ?? 0);
  if (!start) return after + span;
  const lasting = durations[last] ?? 0;
  const end = earliestFit(open, uses[last] ?? [], start.start + span - lasting, lasting);
  return (end?.start ?? start.start + span - lasting) + lasting;
}
