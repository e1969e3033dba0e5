import { el } from './el.ts';

export type Fact = readonly [label: string, value: string];

/** Labels with their values, big enough to read from the bench. */
export function facts(rows: readonly Fact[]): HTMLElement {
  const parts = rows.flatMap(([label, value]) => [el('dt', {}, label), el('dd', {}, value)]);
  return el('dl', { class: 'facts' }, ...parts);
}
