import { type ButtonLooks, button } from '../page/el.ts';
import type { Store } from './store.ts';

/** A button whose handler calls the workbook: off while the page is busy. */
export function workButton(
  looks: ButtonLooks,
  store: Store,
  handler: (store: Store) => unknown,
): HTMLButtonElement {
  const isOff = looks.isOff === true || isBusy(store);
  return button({ ...looks, isOff }, () => void handler(store));
}

export function isBusy(store: Store): boolean {
  return store.get().busy !== '';
}
