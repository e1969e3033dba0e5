import { describe, expect, test } from 'vitest';
import type { PlainElement } from '../../shared/runSheet/plainElement.ts';
import { drawElements } from '../../sidebar/drawElements.ts';
import { HOSTILE } from '../runSheet/hostile.ts';

interface Drawn {
  readonly tag: string;
  readonly attributes: Record<string, string>;
  readonly children: (Drawn | string)[];
}

/** The three calls of a page that drawing may use; anything else, `innerHTML` included, is not there. */
function recordingPage(): Document {
  const page = {
    createTextNode: (text: string) => text,
    createElement: (tag: string) => {
      const drawn: Drawn = { tag, attributes: {}, children: [] };
      return Object.freeze({
        ...drawn,
        setAttribute: (name: string, value: string) => {
          drawn.attributes[name] = value;
        },
        appendChild: (child: Drawn | string) => drawn.children.push(child),
      });
    },
  };
  return page as unknown as Document; // only what drawing needs
}

describe('drawElements', () => {
  test.each(HOSTILE)('draws %j as a text node, character for character', (evil) => {
    const tree: PlainElement = { tag: 'p', attributes: { class: evil }, children: [evil] };
    const drawn = drawElements(tree, recordingPage()) as unknown as Drawn; // made by the page above
    expect(drawn).toMatchObject({ tag: 'p', attributes: { class: evil }, children: [evil] });
  });

  test('keeps order and nesting', () => {
    const tree: PlainElement = {
      tag: 'ul',
      attributes: {},
      children: [
        { tag: 'li', attributes: {}, children: ['one'] },
        { tag: 'li', attributes: {}, children: ['two'] },
      ],
    };
    const drawn = drawElements(tree, recordingPage()) as unknown as Drawn; // made by the page above
    expect(
      drawn.children.map((child) => (typeof child === 'string' ? child : child.children)),
    ).toEqual([['one'], ['two']]);
  });

  test('refuses a tag or attribute that is not on the list', () => {
    const script = { tag: 'script', attributes: {}, children: ['x'] } as unknown as PlainElement; // a careless caller
    const handler = {
      tag: 'p',
      attributes: { onclick: 'x' },
      children: [],
    } as unknown as PlainElement; // a careless caller
    expect(() => drawElements(script, recordingPage())).toThrow('tag: one of');
    expect(() => drawElements(handler, recordingPage())).toThrow('attribute: one of');
  });
});
