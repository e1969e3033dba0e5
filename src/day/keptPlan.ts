import type { FollowedPlan } from '../../shared/day/planning/replanDay.ts';
import type { DayQuestion } from '../../shared/day/shop/pourDay.ts';
import { asciiJson } from '../platform/asciiJson.ts';

/** What is kept of the plan that the shop follows. */
export interface KeptPlan {
  readonly asked: DayQuestion;
  readonly plan: FollowedPlan;
}

const KEY = 'pour day';
/** A property holds 9 kB. */
const PART = 9000;

/** Keeps the plan with the workbook, so that ticks can be told from it later, by whomever. Call it inside the document lock. */
export function keepPlan({ asked, plan }: KeptPlan): void {
  const entries = plan.entries.map(({ id, from, to, person, plate, oven }) => ({
    ...{ id, from, to },
    ...(person !== undefined && { person }),
    ...(plate !== undefined && { plate }),
    ...(oven !== undefined && { oven }),
  }));
  const orders = plan.orders.map(({ order, late }) => ({ order, late }));
  const kept: KeptPlan = { asked, plan: { entries, orders, unplanned: plan.unplanned } };
  const text = asciiJson(kept);
  const store = PropertiesService.getDocumentProperties();
  const parts = Math.ceil(text.length / PART);
  // A run that ends in between leaves no plan rather than halves of two.
  store.setProperty(KEY, '0');
  for (let part = 0; part < parts; part += 1)
    store.setProperty(`${KEY} ${part}`, text.slice(part * PART, (part + 1) * PART));
  for (const key of store.getKeys()) if (partOf(key) >= parts) store.deleteProperty(key);
  store.setProperty(KEY, String(parts));
}

function partOf(key: string): number {
  return key.startsWith(`${KEY} `) ? Number(key.slice(KEY.length + 1)) : -1;
}

/** The plan that is followed; undefined where none is. */
export function keptPlan(): KeptPlan | undefined {
  const store = PropertiesService.getDocumentProperties();
  const parts = Number(store.getProperty(KEY) ?? 0);
  if (parts === 0) return undefined;
  const texts = Array.from({ length: parts }, (_, part) => store.getProperty(`${KEY} ${part}`));
  return JSON.parse(texts.join('')) as KeptPlan; // written by keepPlan
}
