import { cautionLines } from '../../paper/runSheet/sections/cautionsSection.ts';
import { heatPictures } from '../../pictures/heatPictures.ts';
import { isRefused, readCommand } from '../command.ts';
import { DETAIL_TABLES, ORDER_FIELDS, planOfOrder } from './planOfOrder.ts';

/** What the heat dialog draws of an order, and what it says beside it. */
export const heatPicturesFor = readCommand<'heatPicturesFor', (typeof DETAIL_TABLES)[number]>({
  payload: ORDER_FIELDS,
  tables: DETAIL_TABLES,
  answer: (asked, book) => {
    const plan = planOfOrder(book, asked);
    if (isRefused(plan)) return plan;
    const { order, pattern, version, mold, warnings } = plan;
    return {
      kind: 'ok',
      heading: `Order ${order}: ${pattern} v${version} in ${mold}`,
      pictures: heatPictures(plan, book.shop),
      warnings: warnings
        .filter(({ about }) => about === 'heat' || about === 'layers')
        .map(({ text }) => text),
      cautions: cautionLines(plan),
    };
  },
});
