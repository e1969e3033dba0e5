import { describe, expect, test } from 'vitest';
import type { PlainElement } from '../../../shared/elements/plainElement.ts';
import { drawElements } from '../../../sidebar/page/drawElements.ts';
import { HOSTILE } from '../../paper/hostile.ts';

interface Drawn {
  readonly tag: string;
  readonly space: string;
  readonly attributes: Record<string, string>;
  readonly children: (Drawn | string)[];
}

function made(tag: string, space: string) {
  const drawn: Drawn = { tag, space, attributes: {}, children: [] };
  return Object.freeze({
    ...drawn,
    setAttribute: (name: string, value: string) => {
      drawn.attributes[name] = value;
    },
    appendChild: (child: Drawn | string) => drawn.children.push(child),
  });
}

/** The four calls of a page that drawing may use; anything else, `innerHTML` included, is not there. */
function recordingPage(): Document {
  const page = {
    createTextNode: (text: string) => text,
    createElement: (tag: string) => made(tag, 'html'),
    createElementNS: (space: string, tag: string) => made(tag, space),
  };
  return page as unknown as Document; // only what drawing needs
}

describe('drawElements', () => {
  test.each(HOSTILE)('draws %j as a text node, character for character', (evil) => {
    const tree: PlainElement = { tag: 'p', attributes: { class: evil }, children: [evil] };
    const drawn = drawElements(tree, recordingPage()) as unknown as Drawn; // made by the page above
    expect(drawn).toMatchObject({ tag: 'p', attributes: { class: evil }, children: [evil] });
  });

  test.each(HOSTILE)('draws %j in a picture as a text node, in the space of drawings', (evil) => {
    const name: PlainElement = { tag: 'text', attributes: { x: '1.5' }, children: [evil] };
    const tree: PlainElement = { tag: 'svg', attributes: { role: 'img' }, children: [name] };
    const drawn = drawElements(tree, recordingPage()) as unknown as Drawn; // made by the page above
    const space = 'http://www.w3.org/2000/svg';
    expect(drawn).toMatchObject({
      tag: 'svg',
      space,
      children: [{ tag: 'text', space, attributes: { x: '1.5' }, children: [evil] }],
    });
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
    const loading = {
      tag: 'rect',
      attributes: { fill: 'url(http://x)' },
      children: [],
    } as unknown as PlainElement; // a careless caller
    expect(() => drawElements(loading, recordingPage())).toThrow('fill: form');
  });
});
