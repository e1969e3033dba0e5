import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elementsToHtml, escapeHtml } from '../../shared/elements/elementsToHtml.ts';
import { ELEMENT_TAGS, type PlainElement, SVG_TAGS } from '../../shared/elements/plainElement.ts';
import { runSheetDocument } from '../../shared/paper/runSheet/runSheetDocument.ts';
import { runSheetElements } from '../../shared/paper/runSheet/runSheetElements.ts';
import { planOrder } from '../../shared/plan/planOrder.ts';
import { DEMO, demoBook, withChange } from '../book/demoBook.ts';
import { HOSTILE } from '../paper/hostile.ts';

const HTML_LOOKS = /^(?: (?:class|scope|span|width|aria-label)="[^"<>]*")*$/;
/** Names of drawing attributes; values of numbers, grays, lower-case and font names: no colon, so no address. */
const SVG_LOOKS =
  /^(?: (?:[a-z]+\d?|[a-z]+-[a-z]+|viewBox)="(?:[\d., MLZHVCQAz-]*|none|#[\da-f]{3,6}|[a-z\d -]+|[A-Za-z, -]+)")*$/;

function hostilePage(evil: string): string {
  const name = evil.replace(/\p{Cc}/gu, ' ').trim() || 'x';
  const book = demoBook({
    shop: { shopName: evil },
    orders: withChange(DEMO.orders, 0, { notes: evil, customer: evil, mold: name, pattern: name }),
    molds: withChange(DEMO.molds, 0, { mold: name }),
    patterns: DEMO.patterns.map((layer) =>
      layer.pattern === 'Creek minnow'
        ? { ...layer, pattern: name, layer: `${layer.layer}${evil}` }
        : layer,
    ),
    doses: DEMO.doses.map((dose) =>
      dose.pattern === 'Creek minnow'
        ? { ...dose, pattern: name, layer: `${dose.layer}${evil}` }
        : dose,
    ),
    materials: withChange(DEMO.materials, 0, { lot: evil }),
  });
  const plan = planOrder(book, 2);
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  return elementsToHtml(runSheetElements(runSheetDocument(plan, { runId: evil, date: evil })));
}

describe('elementsToHtml', () => {
  test.each(HOSTILE)(
    'hostile text %j in every field leaves only listed tags, class and table attributes',
    (evil) => {
      const page = hostilePage(evil);
      const tags = [...page.matchAll(/<\/?([a-z0-9]+)([^<>]*)>/gi)];
      expect(page.replace(/<\/?[a-z0-9]+[^<>]*>/gi, '')).not.toMatch(/[<>]/);
      for (const [, tag = '', attributes = ''] of tags) {
        const isDrawing = SVG_TAGS.some((one) => one === tag);
        if (!isDrawing) expect(ELEMENT_TAGS as readonly string[]).toContain(tag);
        expect(attributes).toMatch(isDrawing ? SVG_LOOKS : HTML_LOOKS);
      }
    },
  );

  test('what is escaped reads back as it was', () => {
    const back = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'" } as const;
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const printable = text.replace(/\p{Cc}/gu, '');
        const escaped = escapeHtml(printable);
        expect(escaped).not.toMatch(/[<>"']/);
        const read = escaped.replace(
          /&(?:amp|lt|gt|quot|#39);/g,
          (one) => back[one as keyof typeof back],
        ); // the pattern lists the keys
        expect(read).toBe(printable);
      }),
    );
  });

  test('control characters become spaces, so no byte of them reaches the page', () => {
    expect(escapeHtml('a\u0000b\u001bc\nd')).toBe('a b c\nd');
  });

  test('refuses a tag or attribute that is not on the list', () => {
    const script = { tag: 'script', attributes: {}, children: [] } as unknown as PlainElement; // what a careless caller could build
    const handler = {
      tag: 'p',
      attributes: { onclick: 'x' },
      children: [],
    } as unknown as PlainElement; // same
    expect(() => elementsToHtml(script)).toThrow('tag: one of');
    expect(() => elementsToHtml(handler)).toThrow('attribute: one of');
  });

  test.each([
    { tag: 'script', attributes: {} },
    { tag: 'foreignObject', attributes: {} },
    { tag: 'use', attributes: { href: '#a' } },
    { tag: 'image', attributes: {} },
    { tag: 'a', attributes: {} },
    { tag: 'animate', attributes: {} },
    { tag: 'style', attributes: {} },
  ])('refuses to draw <$tag>', ({ tag, attributes }) => {
    const inner = { tag, attributes, children: [] } as unknown as PlainElement; // what a careless caller could build
    const drawing: PlainElement = { tag: 'svg', attributes: {}, children: [inner] };
    expect(() => elementsToHtml(drawing)).toThrow('tag: one of');
  });

  test.each([
    { attributes: { onload: 'alert(1)' }, message: 'attribute: one of' },
    { attributes: { href: 'javascript:alert(1)' }, message: 'attribute: one of' },
    { attributes: { style: 'fill:url(http://x)' }, message: 'attribute: one of' },
    { attributes: { fill: 'url(#a)' }, message: 'fill: form' },
    { attributes: { fill: 'red' }, message: 'fill: form' },
    { attributes: { x: 'NaN' }, message: 'x: form' },
    { attributes: { x: '1e5' }, message: 'x: form' },
    { attributes: { x: '12"><script>' }, message: 'x: form' },
    { attributes: { d: 'M0,0 url(x)' }, message: 'd: form' },
    { attributes: { transform: 'scale(2)' }, message: 'transform: form' },
    { attributes: { id: 'A B' }, message: 'id: form' },
    { attributes: { 'aria-labelledby': '' }, message: 'aria-labelledby: form' },
  ])('refuses a drawing with $attributes', ({ attributes, message }) => {
    const drawing = { tag: 'rect', attributes, children: [] } as unknown as PlainElement; // what a careless caller could build
    expect(() => elementsToHtml(drawing)).toThrow(message);
  });

  test('writes a drawing as it stands', () => {
    const drawing: PlainElement = {
      tag: 'svg',
      attributes: { viewBox: '0 0 10 10', role: 'img', 'aria-labelledby': 'a-title a-desc' },
      children: [
        { tag: 'title', attributes: { id: 'a-title' }, children: ['<b>'] },
        { tag: 'path', attributes: { d: 'M0,0L1.5,-2Z', fill: '#fff' }, children: [] },
        { tag: 'text', attributes: { transform: 'rotate(-90,4,5)' }, children: ['&'] },
      ],
    };
    expect(elementsToHtml(drawing)).toBe(
      '<svg viewBox="0 0 10 10" role="img" aria-labelledby="a-title a-desc"><title id="a-title">&lt;b&gt;</title>' +
        '<path d="M0,0L1.5,-2Z" fill="#fff"></path><text transform="rotate(-90,4,5)">&amp;</text></svg>',
    );
  });

  test('writes nested elements, void columns and text in order', () => {
    const tree: PlainElement = {
      tag: 'div',
      attributes: { class: 'a "b"' },
      children: [
        '1 < 2',
        { tag: 'col', attributes: { width: '5%' }, children: [] },
        { tag: 'p', attributes: {}, children: ['&'] },
      ],
    };
    expect(elementsToHtml(tree)).toBe(
      '<div class="a &quot;b&quot;">1 &lt; 2<col width="5%"><p>&amp;</p></div>',
    );
  });
});
