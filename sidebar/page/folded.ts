import { el } from './el.ts';

/** Parts that show when their line is pressed. */
export function folded(line: string, ...parts: readonly HTMLElement[]): HTMLDetailsElement {
  return el('details', { class: 'more' }, el('summary', {}, line), ...parts);
}

/** What a picture shows, for those who do not see it. */
export function inWords(title: string, text: string): HTMLElement {
  return folded(`In words: ${title}`, el('p', { class: 'small' }, text));
}
