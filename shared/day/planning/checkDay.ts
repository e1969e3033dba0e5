import type { DayRules } from '../../book/settings/dayRules.ts';
import { InputError } from '../../errors/InputError.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { DayOrder, Plug, ShopDay } from './shopDay.ts';

/** @throws InputError when figures of the shop are out of range or a name is missing or given twice */
export function checkDay(day: ShopDay, orders: readonly DayOrder[]): void {
  const watts = new Map(day.circuits.map((circuit) => [circuit.name, circuit.watts]));
  for (const [field, all] of Object.entries({
    person: day.people,
    plate: day.plates,
    mold: day.molds,
    oven: day.ovens,
    circuit: day.circuits,
    order: orders.map(({ run }) => ({ name: run.order })),
  }))
    requireNamedOnce(
      field,
      all.map(({ name }) => name),
    );
  for (const circuit of day.circuits)
    requireNumber(circuit.watts, `watts of ${circuit.name}`, { atLeast: 1, unit: 'W' });
  for (const { name, area, plug } of day.plates) {
    requireNumber(area, `usable area of ${name}`, { greaterThan: 0 });
    checkPlug(name, plug, watts);
  }
  for (const { name, plug } of day.ovens) checkPlug(name, plug, watts);
  for (const { name, owned, footprint } of day.molds) {
    requireNumber(owned, `copies of ${name}`, { whole: true, atLeast: 1 });
    requireNumber(footprint, `footprint of ${name}`, { greaterThan: 0 });
  }
  requireNumber(day.cups, 'cups', { whole: true, atLeast: 1 });
  checkRules(day.rules);
}

function requireNamedOnce(field: string, names: readonly string[]): void {
  const twice = names.find((name, place) => names.indexOf(name) !== place);
  if (twice !== undefined)
    throw new InputError({ field, rule: { kind: 'form', wanted: 'named once' }, value: twice });
}

function checkPlug(name: string, plug: Plug | undefined, circuits: ReadonlyMap<string, number>) {
  if (plug === undefined) return;
  const most = circuits.get(plug.circuit);
  if (most === undefined)
    throw new InputError({
      field: `circuit of ${name}`,
      rule: { kind: 'known', where: 'the circuits' },
      value: plug.circuit,
    });
  requireNumber(plug.watts, `watts of ${name}`, { greaterThan: 0, atMost: most, unit: 'W' });
}

function checkRules(rules: DayRules): void {
  const { heatAttended, cookAttended, layOutShare, demoldShare, inspectShare, ...times } = rules;
  const shares = {
    'attended share of heating': heatAttended,
    'attended share of cooking': cookAttended,
    'share of laying out': layOutShare,
    'share of demolding': demoldShare,
    'share of demolding and inspecting': demoldShare + inspectShare,
    'share of inspecting': inspectShare,
  };
  for (const [field, share] of Object.entries(shares))
    requireNumber(share, field, { atLeast: 0, atMost: 1 });
  const named = {
    'wait of hot molds': times.hotWait,
    'rest between bursts': times.cookRest,
    'time to stir through': times.stirThrough,
    'wait of a cooked cup': times.cupWait,
    'time to top off': times.topOff,
    'change of color': times.colorChange,
    'time between due dates of a batch': times.batchWithin,
    'longest batch': times.longestBatch,
    'pause in a batch': times.batchPause,
  };
  for (const [field, time] of Object.entries(named))
    requireNumber(time, field, { atLeast: 0, unit: 's' });
}
