import { el } from './el.ts';

/** Texts one below the other. */
export function list(texts: readonly string[], look?: string): HTMLElement {
  return el('ul', { class: look }, ...texts.map((text) => el('li', {}, text)));
}
