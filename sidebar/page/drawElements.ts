import { checkedElement } from '../../shared/elements/checkedElement.ts';
import type { PlainElement } from '../../shared/elements/plainElement.ts';

const SVG = 'http://www.w3.org/2000/svg';

/**
 * Draws a tree of plain elements into a page. Texts become text nodes, never markup; what is not on the lists is refused.
 * @param page - the document that the elements are made in
 * @throws InputError for an unlisted tag or attribute, and for a drawing's attribute that holds another kind of value
 */
export function drawElements(element: PlainElement, page: Document = document): Element {
  const { tag, kind, attributes } = checkedElement(element);
  const drawn = kind === 'svg' ? page.createElementNS(SVG, tag) : page.createElement(tag);
  for (const [name, value] of attributes) drawn.setAttribute(name, value);
  for (const child of element.children)
    drawn.appendChild(
      typeof child === 'string' ? page.createTextNode(child) : drawElements(child, page),
    );
  return drawn;
}
