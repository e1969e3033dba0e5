import { requireChoice } from '../errors/requireChoice.ts';
import { ELEMENT_ATTRIBUTES, ELEMENT_TAGS, type PlainElement } from './runSheetElements.ts';

const VOID_TAGS: readonly string[] = ['col'];

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * A tree of plain elements as HTML text. Every text and attribute value is escaped; a tag or attribute that is not on the list is refused.
 * @throws InputError for an unlisted tag or attribute
 */
export function elementsToHtml(element: PlainElement): string {
  const tag = requireChoice(element.tag, 'tag', ELEMENT_TAGS);
  const attributes = Object.entries(element.attributes)
    .map(([name, value]) => {
      const known = requireChoice(name, 'attribute', ELEMENT_ATTRIBUTES);
      return ` ${known}="${escapeHtml(value)}"`;
    })
    .join('');
  if (VOID_TAGS.includes(tag)) return `<${tag}${attributes}>`;
  const children = element.children
    .map((child) => (typeof child === 'string' ? escapeHtml(child) : elementsToHtml(child)))
    .join('');
  return `<${tag}${attributes}>${children}</${tag}>`;
}

/** Text that HTML shows as it is, between tags and inside quoted attributes; control characters become spaces. */
export function escapeHtml(text: string): string {
  return text
    .replace(/[&<>"']/g, (letter) => ESCAPES[letter] ?? letter)
    .replace(/\p{Cc}/gu, (letter) => (letter === '\n' || letter === '\t' ? letter : ' '));
}
