import { InputError } from '../errors/InputError.ts';
import { requireNumber } from '../errors/requireNumber.ts';
import type {
  Hold,
  Link,
  Mode,
  Resource,
  SchedulingProblem,
  Span,
  Task,
} from './schedulingTypes.ts';

/** Refuses a problem that does not hang together. @throws InputError naming the task or resource */
export function checkProblem({ resources, tasks, links, holds = [] }: SchedulingProblem): void {
  const capacities = new Map(resources.map(({ id, capacity }) => [id, capacity]));
  requireOnce(resources, 'resource');
  requireOnce(tasks, 'task');
  for (const resource of resources) checkResource(resource);
  for (const task of tasks) checkTask(task, capacities);
  const known = new Set(tasks.map(({ id }) => id));
  for (const link of links) checkLink(link, known);
  for (const hold of holds) checkHold(hold, known, capacities);
}

function requireOnce(all: readonly { readonly id: string }[], field: string): void {
  const seen = new Set<string>();
  for (const { id } of all) {
    if (seen.has(id)) throw new InputError({ field, rule: ONCE, value: id });
    seen.add(id);
  }
}

const ONCE = { kind: 'form', wanted: 'named once' } as const;
const IN_ORDER = {
  kind: 'form',
  wanted: 'open spans in order, with a closing between them',
} as const;

function checkResource({ id, capacity, open = [] }: Resource): void {
  requireNumber(capacity, `capacity of ${id}`, { whole: true, atLeast: 1 });
  let end = Number.NEGATIVE_INFINITY;
  for (const { from, to } of open) {
    requireNumber(from, `opening of ${id}`, { whole: true });
    requireNumber(to, `closing of ${id}`, { whole: true });
    if (from <= end || to <= from) throw new InputError(badHours(id, { from, to }));
    end = to;
  }
}

function badHours(id: string, { from, to }: Span) {
  return { field: `hours of ${id}`, rule: IN_ORDER, value: [from, to] };
}

function checkTask(task: Task, capacities: ReadonlyMap<string, number>): void {
  const { id, duration, uses = [], release, due, weight, startedAt } = task;
  requireNumber(duration, `duration of ${id}`, { whole: true, atLeast: 0 });
  if (release !== undefined) requireNumber(release, `release of ${id}`, { whole: true });
  if (startedAt !== undefined) requireNumber(startedAt, `start of ${id}`, { whole: true });
  if (due !== undefined) requireNumber(due, `due time of ${id}`, { whole: true });
  if (weight !== undefined) requireNumber(weight, `weight of ${id}`, { greaterThan: 0 });
  for (const modes of uses) checkModes(id, modes, capacities);
}

function checkModes(
  id: string,
  modes: readonly Mode[],
  capacities: ReadonlyMap<string, number>,
): void {
  if (modes.length === 0)
    throw new InputError({ field: `modes of ${id}`, rule: { kind: 'given' }, value: '' });
  for (const mode of modes)
    for (const { resource, amount } of mode) {
      const capacity = capacities.get(resource);
      if (capacity === undefined) throw unknown(`resource of ${id}`, resource, 'the resources');
      requireNumber(amount, `${resource} for ${id}`, {
        whole: true,
        atLeast: 1,
        atMost: capacity,
      });
    }
}

function checkLink({ before, after, least = 0, most }: Link, known: ReadonlySet<string>): void {
  for (const id of [before, after])
    if (!known.has(id)) throw unknown('linked task', id, 'the tasks');
  const wait = `from ${before} to ${after}`;
  requireNumber(least, `least wait ${wait}`, { whole: true, atLeast: 0 });
  if (most !== undefined)
    requireNumber(most, `longest wait ${wait}`, { whole: true, atLeast: least });
}

function checkHold(
  { id, first, last, modes }: Hold,
  known: ReadonlySet<string>,
  capacities: ReadonlyMap<string, number>,
): void {
  for (const task of [first, last])
    if (!known.has(task)) throw unknown(`task of ${id}`, task, 'the tasks');
  checkModes(id, modes, capacities);
}

function unknown(field: string, value: string, where: string): InputError {
  return new InputError({ field, rule: { kind: 'known', where }, value });
}
