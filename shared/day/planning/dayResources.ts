import type { Demand, Mode, Resource } from '../../schedule/schedulingTypes.ts';
import type { DayOrder, DayPlate, Plug, ShopDay, Skill } from './shopDay.ts';
import { anyHours } from './weekHours.ts';

export type ResourceKind =
  | 'person'
  | 'plate'
  | 'mold'
  | 'oven'
  | 'circuit'
  | 'cups'
  | 'color bench'
  | 'shop';

/** A person's whole attention; tasks take per cent of it. */
const WHOLE = 100;
/** Plate areas are counted in square centimeters. */
const CENTIMETERS = 1e4;
/** Nothing but the hours of the shop limits how much goes on in it. */
const PLENTY = 1000;

export function resourceId(kind: ResourceKind, name = ''): string {
  return name === '' ? kind : `${kind} ${name}`;
}

export interface DayResource extends Resource {
  readonly kind: ResourceKind;
  readonly name: string;
}

function resource(kind: ResourceKind, name: string, facts: Omit<Resource, 'id'>): DayResource {
  return { kind, name, id: resourceId(kind, name), ...facts };
}

/** Everything that limits the day. */
export function dayResources(day: ShopDay): readonly DayResource[] {
  const { people, plates, molds, ovens, circuits, cups } = day;
  const open = anyHours(people.map(({ hours }) => hours));
  return [
    ...people.map(({ name, hours }) => resource('person', name, { capacity: WHOLE, open: hours })),
    ...plates.map((plate) => {
      const capacity = plate.rounds === 'one' ? 1 : Math.floor(plate.area * CENTIMETERS);
      return resource('plate', plate.name, { capacity });
    }),
    ...molds.map(({ name, owned }) => resource('mold', name, { capacity: owned })),
    ...ovens.map(({ name }) => resource('oven', name, { capacity: 1 })),
    ...circuits.map(({ name, watts }) =>
      resource('circuit', name, { capacity: Math.floor(watts) }),
    ),
    resource('cups', '', { capacity: cups }),
    resource('color bench', '', { capacity: 1 }),
    resource('shop', '', { capacity: PLENTY, open }),
  ];
}

/** Anyone who can do it, those who can do least else first. */
export function personModes(day: ShopDay, skill: Skill | 'any', share = 1): readonly Mode[] {
  const amount = Math.max(1, Math.ceil(share * WHOLE));
  return day.people
    .filter(({ skills }) => skill === 'any' || skills.includes(skill))
    .sort((one, other) => one.skills.length - other.skills.length)
    .map(({ name }) => [{ resource: resourceId('person', name), amount }]);
}

export function ovenModes(day: ShopDay): readonly Mode[] {
  return day.ovens.map(({ name, plug }) => [
    { resource: resourceId('oven', name), amount: 1 },
    ...drawn(plug),
    watched(),
  ]);
}

/**
 * The plates on which a round of the order can stand, switched on: somebody is in the shop all the while. A plate's rated power is
 * counted for every round on it, so that two sharing one on a short circuit err to the safe side.
 */
export function plateModes(day: ShopDay, order: DayOrder): readonly Mode[] {
  return platesFor(day, order).map((plate) => [
    {
      resource: resourceId('plate', plate.name),
      amount: plate.rounds === 'one' ? 1 : covered(day, order),
    },
    ...drawn(plate.plug),
    watched(),
  ]);
}

/** Those that the molds of a round fit on. */
function platesFor(day: ShopDay, order: DayOrder): readonly DayPlate[] {
  const { plate } = order.run;
  const names = order.plates ?? (plate.kind === 'reachable' ? [plate.plate] : []);
  const needed = covered(day, order);
  return names.flatMap((name) =>
    day.plates.filter((one) => one.name === name && Math.floor(one.area * CENTIMETERS) >= needed),
  );
}

/** By the molds of a round [cm2] */
function covered({ molds }: ShopDay, { run }: DayOrder): number {
  const footprint = molds.find(({ name }) => name === run.mold)?.footprint ?? 0;
  return Math.max(1, Math.ceil(footprint * run.moldsInUse * CENTIMETERS));
}

function drawn(plug: Plug | undefined): readonly Demand[] {
  if (plug === undefined) return [];
  return [{ resource: resourceId('circuit', plug.circuit), amount: Math.ceil(plug.watts) }];
}

/** Nothing hot is left alone in the shop. */
function watched(): Demand {
  return { resource: resourceId('shop'), amount: 1 };
}
