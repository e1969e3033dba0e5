import { describe, expect, test } from 'vitest';
import { pourDay } from '../../../shared/day/shop/pourDay.ts';
import { replannedDay } from '../../../shared/day/shop/replannedDay.ts';
import { elementsToHtml } from '../../../shared/elements/elementsToHtml.ts';
import { dayElements } from '../../../shared/paper/day/dayElements.ts';
import type { DayShown } from '../../../shared/paper/day/dayTypes.ts';
import { peopleIn } from '../../../shared/paper/day/taskTables.ts';
import { demoBook } from '../../../templates/demoShop/demoBook.ts';
import { HOUR } from '../../day/planning/demoDay.ts';
import { HOSTILE } from '../hostile.ts';

const BOOK = demoBook();
const ASKED = { firstDay: '2026-11-30', days: 5, orders: ['1007', '1009'] };
const DAY = pourDay(BOOK, ASKED);

function page(day: DayShown, shopName = ''): string {
  return elementsToHtml(dayElements({ shopName, day }));
}

describe('dayElements', () => {
  test('the timetable stands alone under the shop, with its cautions', () => {
    const [first = ''] = page(DAY, 'Creek & Co').split('</section>');
    expect(first).toMatch(
      /^<article class="pour-day"><section class="timetable-page"><h1>Creek &amp; Co: Pour day/,
    );
    expect(first).toContain('<p>It fits. All 2 orders are packed by ');
    expect(first).toMatch(/<p class="cautions">SDS, equipment manuals.*no water near the melt\.</);
    expect(first.match(/<svg [^>]*class="picture timetable"/g)).toHaveLength(1);
    expect(page(DAY)).toMatch(/<h1>Pour day/);
  });

  test('the lists name each order once, and each person with every task at its clock time', () => {
    const lists = page(DAY).split('<section class="lists">')[1] ?? '';
    expect([...lists.matchAll(/<h2>(.*?)<\/h2>/g)].map(([, heading]) => heading)).toEqual([
      'Packed in this sequence',
      'On the plates',
      'What limits it',
      'Who does what',
    ]);
    const packed = [...lists.matchAll(/<strong>Order (\d+): <\/strong>/g)].map(([, name]) => name);
    const byFinish = [...DAY.plan.orders].sort((one, other) => one.finish - other.finish);
    expect(packed).toEqual(byFinish.map(({ order }) => order));
    const owned = DAY.plan.entries.filter(({ person }) => person !== undefined);
    expect(lists.match(/<tr><th scope="row">\d+:\d\d [ap]m<\/th><td>/g)).toHaveLength(owned.length);
    for (const person of peopleIn(DAY)) expect(lists).toContain(`<caption>${person}, `);
    expect(lists).toContain('is the bottleneck');
    expect(lists).toContain('One more plate ');
  });

  test('after the ticks it has the line of now, and offers no more of anything', () => {
    const { entries, orders, unplanned } = DAY.plan;
    const followed = { entries, orders, unplanned };
    const now = 9 * HOUR;
    const replanned = replannedDay(BOOK, ASKED, { followed, ticks: [], now });
    const html = page(replanned);
    expect(html).toContain('>now</text>');
    expect(html).not.toContain('One more ');
    expect(page(DAY)).not.toContain('>now</text>');
  });

  test.each(HOSTILE)('the shop name %j stays text', (evil) => {
    const html = page(DAY, evil);
    expect(html.match(/<(script|img|style)/g)).toBeNull();
    expect(html.match(/<svg /g)).toHaveLength(1);
  });
});
