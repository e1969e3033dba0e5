import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { HeatPictures, OrderPayload } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { cautionLines } from '../../shared/paper/runSheet/sections/cautions.ts';
import { heatPictures } from '../../shared/pictures/heatPictures.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused } from './orderInBook.ts';
import { planFor } from './planFor.ts';
import { readPayload } from './readPayload.ts';
import { HEAT_FIELDS } from './showHeat.ts';

/**
 * Page call: what the heat dialog draws of an order, and what it says beside it.
 * @param payload `{ order, firstPour? }`
 */
export function heatPicturesFor(payload: unknown): HeatPictures | Refused {
  const read = readPayload<OrderPayload>(HEAT_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const book = readBookNow(PLAN_TABLES);
  const plan = planFor(book, read.value);
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
}
