import { el } from './el.ts';

/** A control under its label, with what is wrong with it below. */
export function labeled(
  label: string,
  control: HTMLElement,
  ...below: readonly HTMLElement[]
): HTMLElement {
  return el('div', { class: 'field' }, el('label', { for: control.id }, label), control, ...below);
}
