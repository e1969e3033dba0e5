import type { Cost, Demand, Schedule, Span } from '../../schedule/schedulingTypes.ts';
import type { DayPart } from './dayPart.ts';
import type { DayResource, ResourceKind } from './dayResources.ts';
import type { DayTask, DayWork } from './dayTask.ts';
import type { DayOrder } from './shopDay.ts';

/** One line of the timetable; by whom and with what, where that is chosen [s]. */
export interface DayEntry extends DayTask, Span {
  readonly person?: string;
  readonly plate?: string;
  readonly mold?: string;
  readonly oven?: string;
}

/** A resource taken over a span; `what` is left out where it is held across several tasks. */
export interface DayBar extends Span {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly name: string;
  readonly amount: number;
  readonly order: string;
  readonly round?: number;
  readonly what?: DayWork;
}

export interface OrderOutcome {
  readonly order: string;
  /** Packed [s] */
  readonly finish: number;
  readonly due?: number;
  /** Past its due [s], 0 where in time or without a due */
  readonly late: number;
}

export interface DayTimetable {
  /** By their start */
  readonly entries: readonly DayEntry[];
  /** By resource, then by start */
  readonly bars: readonly DayBar[];
  readonly orders: readonly OrderOutcome[];
  readonly cost: Cost;
}

/** Tasks during which a held resource is shown with them. */
const SHOWN: Partial<Record<ResourceKind, readonly DayWork[]>> = {
  person: ['pour', 'top off'],
  plate: ['set on the plate', 'heat', 'pour', 'top off'],
  mold: ['set on the plate', 'heat', 'pour', 'top off', 'cool', 'demold'],
};

/** A schedule as people read it. */
export function dayTimetable(
  part: DayPart,
  resources: readonly DayResource[],
  schedule: Schedule,
  orders: readonly DayOrder[],
): DayTimetable {
  const known = new Map(resources.map((resource) => [resource.id, resource]));
  const held = new Map<string, Demand[]>();
  part.holds.forEach(({ order, round }, place) => {
    const key = roundKey(order, round);
    held.set(key, [...(held.get(key) ?? []), ...(schedule.holds[place]?.takes ?? [])]);
  });
  const entries = part.tasks.map((task, place): DayEntry => {
    const { id, order, what, round, layer } = task;
    const { from = 0, to = 0, takes = [] } = schedule.tasks[place] ?? {};
    const others = (held.get(roundKey(order, round)) ?? []).filter((taken) => {
      const kind = known.get(taken.resource)?.kind;
      return kind !== undefined && SHOWN[kind]?.includes(what);
    });
    return {
      ...{ id, order, what, from, to },
      ...(round !== undefined && { round }),
      ...(layer !== undefined && { layer }),
      ...namesIn([...takes, ...others], known),
    };
  });
  const bars = [
    ...part.tasks.flatMap(({ id, order, round, what }, place) =>
      barsOf(schedule.tasks[place], known, { id, order, what, ...(round && { round }) }),
    ),
    ...part.holds.flatMap(({ id, order, round }, place) =>
      barsOf(schedule.holds[place], known, { id, order, ...(round && { round }) }),
    ),
  ];
  const places = new Map(resources.map(({ id }, place) => [id, place]));
  const placeOf = ({ kind, name }: DayBar) => places.get(name ? `${kind} ${name}` : kind) ?? 0;
  return {
    entries: entries.sort((one, other) => one.from - other.from || one.to - other.to),
    bars: bars.sort((one, other) => placeOf(one) - placeOf(other) || one.from - other.from),
    orders: outcomes(entries, orders),
    cost: schedule.cost,
  };
}

function roundKey(order: string, round: number | undefined): string {
  return `${order}\n${round ?? ''}`;
}

function namesIn(takes: readonly Demand[], known: ReadonlyMap<string, DayResource>) {
  const named = (kind: ResourceKind) =>
    takes.flatMap(({ resource }) => {
      const found = known.get(resource);
      return found?.kind === kind ? [found.name] : [];
    })[0];
  const all = {
    person: named('person'),
    plate: named('plate'),
    mold: named('mold'),
    oven: named('oven'),
  };
  const { person, plate, mold, oven } = all;
  return {
    ...(person !== undefined && { person }),
    ...(plate !== undefined && { plate }),
    ...(mold !== undefined && { mold }),
    ...(oven !== undefined && { oven }),
  };
}

function barsOf(
  placed: (Span & { readonly takes: readonly Demand[] }) | undefined,
  known: ReadonlyMap<string, DayResource>,
  whose: Pick<DayBar, 'id' | 'order' | 'round' | 'what'>,
): readonly DayBar[] {
  if (!placed || placed.to === placed.from) return [];
  const { from, to, takes } = placed;
  return takes.flatMap(({ resource, amount }) => {
    const found = known.get(resource);
    // The shop's hours limit, but nobody reads a bar of them.
    if (!found || found.kind === 'shop') return [];
    return [{ ...whose, kind: found.kind, name: found.name, amount, from, to }];
  });
}

function outcomes(entries: readonly DayEntry[], orders: readonly DayOrder[]) {
  return orders.map(({ run, due }): OrderOutcome => {
    const packed = entries.find(({ order, what }) => order === run.order && what === 'pack');
    const finish = packed?.to ?? 0;
    const late = due === undefined ? 0 : Math.max(0, finish - due);
    return { order: run.order, finish, late, ...(due !== undefined && { due }) };
  });
}
