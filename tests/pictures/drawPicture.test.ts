import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elementsToHtml } from '../../shared/elements/elementsToHtml.ts';
import type { PlainElement } from '../../shared/elements/plainElement.ts';
import { textWidth } from '../../shared/pictures/chart/fitText.ts';
import { drawPicture } from '../../shared/pictures/drawPicture.ts';
import { pictureText, pictureTitle } from '../../shared/pictures/pictureText.ts';
import type { Picture } from '../../shared/pictures/pictureTypes.ts';
import { ANY_PICTURE } from './anyPicture.ts';
import { HEAT_UP, PROFILE, TIMELINE, TIMETABLE, TRIAL } from './pictureData.ts';

const ALL: readonly Picture[] = [HEAT_UP, TIMELINE, PROFILE, TRIAL, TIMETABLE];
const WIDTHS = [300, 480, 720];

function elements(root: PlainElement): readonly PlainElement[] {
  const inner = root.children.filter((child) => typeof child !== 'string');
  return [root, ...inner.flatMap(elements)];
}

function textOf(element: PlainElement): string {
  return element.children.filter((child) => typeof child === 'string').join('');
}

/** Where an estimated text begins and ends. */
function span(element: PlainElement): readonly [number, number] {
  const wide = textWidth(textOf(element), Number(element.attributes['font-size']));
  const x = Number(element.attributes.x);
  const anchor = element.attributes['text-anchor'];
  if (anchor === 'end') return [x - wide, x];
  return anchor === 'middle' ? [x - wide / 2, x + wide / 2] : [x, x + wide];
}

describe('drawPicture', () => {
  test('any data gives listed elements whose numbers are numbers', () => {
    fc.assert(
      fc.property(ANY_PICTURE, fc.constantFrom(...WIDTHS), (picture, width) => {
        // Serializing refuses what is not on the lists: NaN, infinity and exponents too.
        const html = elementsToHtml(drawPicture(picture, width));
        expect(html).toMatch(/^<svg .*<\/svg>$/s);
      }),
      { numRuns: 300 },
    );
  });

  test('any data gives a name and words without NaN, infinity or undefined', () => {
    fc.assert(
      fc.property(ANY_PICTURE, (picture) => {
        const root = drawPicture(picture, 600);
        const [title, desc] = elements(root).slice(1, 3);
        expect(title && textOf(title)).toBe(pictureTitle(picture));
        expect(desc && textOf(desc)).toBe(pictureText(picture));
        expect(pictureText(picture)).not.toMatch(/NaN|infinity|undefined|not a number/i);
      }),
    );
  });

  test.each(ALL.map((picture) => ({ kind: picture.kind, picture })))(
    '$kind is an image named by its own title and text alternative',
    ({ kind, picture }) => {
      const root = drawPicture(picture, 600);
      expect(root.attributes).toMatchObject({
        role: 'img',
        'aria-labelledby': `picture-${kind}-title picture-${kind}-desc`,
      });
      expect(root.children.slice(0, 2)).toEqual([
        {
          tag: 'title',
          attributes: { id: `picture-${kind}-title` },
          children: [pictureTitle(picture)],
        },
        {
          tag: 'desc',
          attributes: { id: `picture-${kind}-desc` },
          children: [pictureText(picture)],
        },
      ]);
    },
  );

  test('nothing has a color: every fill and line is a gray', () => {
    const looks = ALL.flatMap((picture) => elements(drawPicture(picture, 600))).flatMap(
      ({ attributes: { fill = 'none', stroke = 'none' } }) => [fill, stroke],
    );
    expect(looks.filter((look) => !/^(none|#(.)\2\2|#(..)\3\3)$/.test(look))).toEqual([]);
  });

  test('every text is 9 pt or larger on paper at natural size', () => {
    const texts = ALL.flatMap((picture) => elements(drawPicture(picture, 600))).filter(
      ({ tag }) => tag === 'text',
    );
    expect(Math.min(...texts.map(({ attributes }) => Number(attributes['font-size'])))).toBe(12);
  });

  test.each([420, 600, 720])('at %i px every text stands within the picture', (width) => {
    for (const picture of ALL)
      for (const text of elements(drawPicture(picture, width)).filter(
        ({ tag }) => tag === 'text',
      )) {
        const [start, end] = span(text);
        expect(start, textOf(text)).toBeGreaterThanOrEqual(0);
        expect(end, textOf(text)).toBeLessThanOrEqual(width);
      }
  });

  test('names of any length are cut to their room', () => {
    const long = {
      ...TIMELINE,
      layers: TIMELINE.layers.map((layer) => ({ ...layer, name: 'W'.repeat(200) })),
    };
    for (const text of elements(drawPicture(long, 600)).filter(({ tag }) => tag === 'text'))
      expect(span(text)[1]).toBeLessThanOrEqual(600);
  });

  test('leaves what it draws as it was', () => {
    for (const picture of ALL) expect(() => drawPicture(deepFrozen(picture), 600)).not.toThrow();
  });
});

/** Pixel of a tick by what it says. */
function tickAt(all: readonly PlainElement[], says: string): number {
  const tick = all.find((one) => one.tag === 'text' && textOf(one) === says);
  return Number(tick?.attributes.x);
}

describe('layer timeline', () => {
  const all = elements(drawPicture(TIMELINE, 640));
  const pours = all.filter((one) => one.attributes['stroke-linecap'] === 'round').slice(1);
  const perSecond = (tickAt(all, '1:00') - tickAt(all, '0:00')) / 60;

  test('each pour runs from its first to its last cavity on the axis', () => {
    const drawn = pours.map(({ attributes: { x1, x2 } }) =>
      [x1, x2].map((x) => (Number(x) - tickAt(all, '0:00')) / perSecond),
    );
    for (const [index, { run }] of TIMELINE.layers.entries()) {
      // Pixels are rounded to a tenth: 0.1 s here.
      expect(drawn[index]?.[0]).toBeNear(run.firstAt, { absolute: 0.2 });
      expect(drawn[index]?.[1]).toBeNear(run.lastAt, { absolute: 0.2 });
    }
  });

  test('says what hatching and dashes mean only where there are any', () => {
    const plain = {
      kind: 'layer-timeline',
      layers: TIMELINE.layers.map(({ bands: _, ...layer }) => ({
        ...layer,
        openTime: { kind: 'stays open' } as const,
      })),
    } as const;
    const said = (one: Picture) => elements(drawPicture(one, 640)).map(textOf);
    expect(said(TIMELINE)).toEqual(
      expect.arrayContaining(['may be too early or too late', 'closed, no longer moves']),
    );
    expect(said(plain)).not.toContain('may be too early or too late');
    expect(said(plain)).not.toContain('closed, no longer moves');
    expect(said(plain)).toContain('may follow the layer below');
  });
});

describe('heat-up', () => {
  test('the bar of the target runs from its earliest to its latest minute', () => {
    const all = elements(drawPicture(HEAT_UP, 640));
    const perMinute = (tickAt(all, '20') - tickAt(all, '10')) / 10;
    const minute = (x: string) => (Number(x) - tickAt(all, '10')) / perMinute + 10;
    // The first such outline stands in the legend.
    const [, bar] = all.filter(
      ({ tag, attributes }) => tag === 'path' && attributes['stroke-width'] === '1.4',
    );
    const xs = [...(bar?.attributes.d ?? '').matchAll(/[ML]([\d.]+),/g)].map(([, x = '']) =>
      minute(x),
    );
    // Pixels are rounded to a tenth: 0.02 min here.
    expect(Math.min(...xs)).toBeNear(830 / 60, { absolute: 0.03 });
    expect(Math.max(...xs)).toBeNear(1710 / 60, { absolute: 0.03 });
  });

  test('without a target there is no line of it, no event and no bar', () => {
    const { target: _, ...cool } = HEAT_UP;
    const said = elements(drawPicture(cool, 640)).map(textOf).join(' ');
    expect(said).not.toMatch(/must read|first pour,|hot enough, nine/);
  });
});

function deepFrozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null) Object.values(value).forEach(deepFrozen);
  return Object.freeze(value);
}
