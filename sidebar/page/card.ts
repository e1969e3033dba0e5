import { el } from './el.ts';

/** A part of a view under its own heading. */
export function card(heading: string, ...parts: readonly Element[]): HTMLElement {
  return el('section', { class: 'card' }, el('h2', {}, heading), ...parts);
}
