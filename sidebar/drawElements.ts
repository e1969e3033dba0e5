import { requireChoice } from '../shared/errors/requireChoice.ts';
import {
  ELEMENT_ATTRIBUTES,
  ELEMENT_TAGS,
  type PlainElement,
} from '../shared/runSheet/runSheetElements.ts';

/**
 * Draws a tree of plain elements into a page. Texts become text nodes, never markup; unlisted tags and attributes are refused.
 * @param page - the document that the elements are made in
 * @throws InputError for an unlisted tag or attribute
 */
export function drawElements(element: PlainElement, page: Document = document): HTMLElement {
  const drawn = page.createElement(requireChoice(element.tag, 'tag', ELEMENT_TAGS));
  for (const [name, value] of Object.entries(element.attributes))
    drawn.setAttribute(requireChoice(name, 'attribute', ELEMENT_ATTRIBUTES), value);
  for (const child of element.children)
    drawn.appendChild(
      typeof child === 'string' ? page.createTextNode(child) : drawElements(child, page),
    );
  return drawn;
}
