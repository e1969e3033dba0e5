import { describe, expect, test } from 'vitest';
import type { PlainElement } from '../../../shared/elements/plainElement.ts';
import { drawPicture } from '../../../shared/pictures/drawPicture.ts';
import { pictureText } from '../../../shared/pictures/pictureText.ts';
import type { Timetable } from '../../../shared/pictures/timetable/timetable.ts';
import { TIMETABLE } from '../pictureData.ts';

const HOUR = 3600;
const WIDTH = 1000;

function elements(root: PlainElement): readonly PlainElement[] {
  const inner = root.children.filter((child) => typeof child !== 'string');
  return [root, ...inner.flatMap(elements)];
}

function said(root: PlainElement): readonly string[] {
  return elements(root)
    .filter(({ tag }) => tag === 'text')
    .map(({ children }) => children.join(''));
}

function numberOf({ attributes }: PlainElement, name: 'x' | 'y' | 'width'): number {
  return Number(attributes[name]);
}

/** Bars in the order of the data; swatches of the legend are 12 px high, bars 17. */
function barsOf(timetable: Timetable, width = WIDTH): readonly PlainElement[] {
  return elements(drawPicture(timetable, width)).filter(
    ({ tag, attributes }) => tag === 'rect' && attributes.height === '17',
  );
}

describe('timetable', () => {
  test('an hour is equally wide on every day and closed hours take no room', () => {
    const [color, pour, pack] = barsOf(TIMETABLE);
    if (!color || !pour || !pack) throw new Error('Ada has three bars');
    const perHour = numberOf(color, 'width');
    // Pixels are rounded to a tenth.
    expect(numberOf(pour, 'width')).toBeNear(perHour / 2, { absolute: 0.11 });
    expect(numberOf(pack, 'width')).toBeNear(perHour * 2, { absolute: 0.2 });
    // From 10 in the morning it is seven hours to the end of the day, then one of the next, with the space between the days.
    const apart = numberOf(pack, 'x') - numberOf(pour, 'x');
    expect(apart).toBeNear(8 * perHour + 8, { absolute: 1 });
  });

  test('a mold that stands overnight is drawn on both days, below the one that is there already', () => {
    const bars = barsOf(TIMETABLE);
    const [first, evening, morning] = bars.slice(-3);
    if (!first || !evening || !morning) throw new Error('the mold has three parts');
    expect(numberOf(evening, 'y') - numberOf(first, 'y')).toBe(20);
    expect(numberOf(morning, 'y')).toBe(numberOf(evening, 'y'));
    expect(numberOf(morning, 'x')).toBeGreaterThan(
      numberOf(evening, 'x') + numberOf(evening, 'width'),
    );
  });

  test('bars say order and task where there is room, and the legend names every order', () => {
    const texts = said(drawPicture(TIMETABLE, WIDTH));
    expect(texts).toEqual(expect.arrayContaining(['2103 pack', '2101', '2102', '2103']));
    const narrow = said(drawPicture(TIMETABLE, 300));
    expect(narrow.filter((text) => / (pack|weigh and color)$/.test(text))).toEqual([]);
    expect(narrow).toEqual(expect.arrayContaining(['2101', '2102', '2103', 'now']));
  });

  test('six orders next to each other look different without color', () => {
    const orders = Array.from({ length: 6 }, (_, order) => ({
      name: String(order),
      finish: 0,
      late: 0,
    }));
    const rows = orders.map((_, order) => ({
      name: String(order),
      bars: [{ from: 8 * HOUR, to: 9 * HOUR, order, text: '' }],
    }));
    const timetable = { ...TIMETABLE, orders, groups: [{ name: 'People', rows }] };
    const all = elements(drawPicture(timetable, WIDTH));
    const looks = all.flatMap(({ tag, attributes }, index) => {
      if (tag !== 'rect' || attributes.height !== '17') return [];
      const lines = all[index + 1]?.attributes.d ?? '';
      // How the first line leans: up, down, across, or none.
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = (lines.match(/[\d.]+/g) ?? []).map(Number);
      return [`${attributes.fill} ${Math.sign(x2 - x1)} ${Math.sign(y2 - y1)}`];
    });
    expect(new Set(looks).size).toBe(6);
  });

  test('late orders are said in words and their mark is filled', () => {
    const all = elements(drawPicture(TIMETABLE, WIDTH));
    expect(said(drawPicture(TIMETABLE, WIDTH))).toContain('2103 late');
    const marks = all.filter(({ attributes }) => attributes['stroke-width'] === '1.2');
    expect(marks.map(({ attributes }) => attributes.fill).sort()).toEqual(['#000', '#fff']);
  });

  test('the line of now stands where the clock is, and only within the hours shown', () => {
    const lines = (timetable: Timetable) =>
      elements(drawPicture(timetable, WIDTH)).filter(
        ({ attributes }) => attributes['stroke-dasharray'] === '5 3',
      );
    const [, pour] = barsOf(TIMETABLE);
    if (!pour) throw new Error('Ada pours');
    const [, line] = lines(TIMETABLE);
    // Half-way through the pour, which begins at 10 and takes half an hour.
    expect(Number(line?.attributes.x1)).toBeNear(
      numberOf(pour, 'x') + numberOf(pour, 'width') / 2,
      { absolute: 0.2 },
    );
    expect(lines({ ...TIMETABLE, now: 20 * HOUR })).toHaveLength(1);
  });

  test('in words it says who is at what from when to when, and what becomes of every order', () => {
    expect(pictureText(TIMETABLE)).toBe(
      'Mon Nov 30: Ada 8:00 am to 10:30 am, 2101; Ben 1:00 pm to 2:00 pm, 2102; Ribbed 4 in 9:00 am to 5:00 pm, 2101 and 2103. ' +
        'Tue Dec 1: Ada 9:00 am to 11:00 am, 2103; Ribbed 4 in 8:00 am to 9:00 am, 2103. ' +
        'Order 2101 packed Mon Nov 30 4:00 pm, due Mon Nov 30 5:00 pm. ' +
        'Order 2102 packed Mon Nov 30 3:00 pm. ' +
        'Order 2103 packed Tue Dec 1 11:00 am, late for Mon Nov 30 5:00 pm.',
    );
    expect(pictureText({ ...TIMETABLE, orders: [], groups: [] })).toBe('No order is planned.');
  });
});
