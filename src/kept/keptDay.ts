import type { FollowedDay } from '../../shared/day/shop/followedDay.ts';
import { asciiJson } from '../../shared/words/asciiJson.ts';

const KEY = 'pour day';
/** A property holds 9 kB. */
const PART = 9000;

/** Keeps the plan with the workbook, so that ticks can be told from it later, by whomever. Call it inside the document lock. */
export function keepDay(day: FollowedDay): void {
  const text = asciiJson(day);
  const store = PropertiesService.getDocumentProperties();
  const parts = Math.ceil(text.length / PART);
  const kept: Record<string, string> = { [KEY]: String(parts) };
  for (let part = 0; part < parts; part += 1)
    kept[`${KEY} ${part}`] = text.slice(part * PART, (part + 1) * PART);
  // In one go: a run that ends in between leaves the old plan or the new one, never halves of two.
  store.setProperties(kept);
  for (const key of store.getKeys()) if (partOf(key) >= parts) store.deleteProperty(key);
}

function partOf(key: string): number {
  return key.startsWith(`${KEY} `) ? Number(key.slice(KEY.length + 1)) : -1;
}

/** The plan that is followed; undefined where none is. */
export function keptDay(): FollowedDay | undefined {
  const store = PropertiesService.getDocumentProperties();
  const parts = Number(store.getProperty(KEY) ?? 0);
  if (parts === 0) return undefined;
  const texts = Array.from({ length: parts }, (_, part) => store.getProperty(`${KEY} ${part}`));
  return JSON.parse(texts.join('')) as FollowedDay; // written by keepDay
}
