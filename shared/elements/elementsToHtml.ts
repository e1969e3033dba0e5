import { checkedElement } from './checkedElement.ts';
import type { PlainElement } from './plainElement.ts';

const VOID_TAGS: readonly string[] = ['col'];

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * A tree of plain elements as HTML text. Every text and attribute value is escaped; what is not on the lists is refused.
 * @throws InputError for an unlisted tag or attribute, and for a drawing's attribute that holds another kind of value
 */
export function elementsToHtml(element: PlainElement): string {
  const checked = checkedElement(element);
  const { tag } = checked;
  const attributes = checked.attributes
    .map(([name, value]) => ` ${name}="${escapeHtml(value)}"`)
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
