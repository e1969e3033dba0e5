import type { ElementTag, PlainElement } from './plainElement.ts';

/** An HTML element of a class; `""` for none. */
export function element(
  tag: ElementTag,
  className: string,
  children: readonly (PlainElement | string)[],
): PlainElement {
  return { tag, attributes: className === '' ? {} : { class: className }, children };
}
