import { htmlElement, pushButton } from '../htmlElement.ts';

/** Time a short message stays [ms]. */
const SHORT = 6_000;

/** A message over the grid; `stay` until closed for what the person must know. */
export function toast(
  place: HTMLElement,
  title: string,
  text: string,
  how: 'short' | 'stay' = 'short',
): void {
  const head = title === '' ? [] : [htmlElement('strong', {}, title)];
  const shown = htmlElement('div', { class: 'toast' }, ...head, htmlElement('span', {}, text));
  const close = () => shown.remove();
  shown.append(pushButton('Close', close, { class: 'quiet', 'aria-label': 'Close message' }));
  place.append(shown);
  if (how === 'short') setTimeout(close, SHORT);
}
