import type { ElementTag, PlainElement } from './plainElement.ts';

type Child = PlainElement | string;

/** An HTML element of a class; `""` for none. */
export function element(
  tag: ElementTag,
  className: string,
  children: readonly Child[],
): PlainElement {
  return { tag, attributes: className === '' ? {} : { class: className }, children };
}

/** The head of a table's column or row. */
export function headCell(scope: 'col' | 'row', child: Child): PlainElement {
  return { tag: 'th', attributes: { scope }, children: [child] };
}

/** A section under its heading. */
export function titledSection(
  className: string,
  heading: string,
  children: readonly Child[],
): PlainElement {
  return element('section', className, [element('h2', '', [heading]), ...children]);
}

/** Texts one below the other. */
export function textList(className: string, texts: readonly string[]): PlainElement {
  return element(
    'ul',
    className,
    texts.map((text) => element('li', '', [text])),
  );
}
