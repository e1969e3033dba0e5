import type { Infeasibility } from './scheduleGroup.ts';
import type { NoSchedule, SchedulingProblem } from './schedulingTypes.ts';

export type Obstacle =
  | Infeasibility
  | { readonly kind: 'circle'; readonly task: number }
  | { readonly kind: 'contradiction'; readonly before: number; readonly after: number };

/** The obstacle by the names of the tasks. */
export function noSchedule(
  { tasks, holds = [] }: SchedulingProblem,
  obstacle: Obstacle | undefined,
): NoSchedule {
  const name = (task: number) => tasks[task]?.id ?? '';
  switch (obstacle?.kind) {
    case 'circle':
      return none('circle', `${name(obstacle.task)} waits, by way of others, for itself`, [
        name(obstacle.task),
      ]);
    case 'contradiction': {
      const [before, after] = [name(obstacle.before), name(obstacle.after)];
      const because = `what must happen from ${before} to ${after} takes longer than is allowed between them`;
      return none('window', because, [before, after]);
    }
    case 'window': {
      const [before, after] = [name(obstacle.before), name(obstacle.after)];
      const because = `${after} finds no room soon enough after ${before}`;
      return none('window', because, [before, after]);
    }
    case 'hold': {
      const hold = holds[obstacle.hold];
      const because = `${hold?.id ?? ''} is at no time free from ${hold?.first ?? ''} to ${hold?.last ?? ''}`;
      return none('no room', because, hold ? [hold.first, hold.last] : []);
    }
    case 'no room':
      return none('no room', `${name(obstacle.task)} finds no room in the hours that are open`, [
        name(obstacle.task),
      ]);
    case undefined:
      return none('no room', 'no schedule was found in so few iterations', []);
  }
}

function none(why: NoSchedule['why'], because: string, tasks: readonly string[]): NoSchedule {
  return { kind: 'no schedule', why, because, tasks };
}
