import { CURRENCIES } from '../../book/currencies.ts';
import { addCapacity } from './addCapacity.ts';
import { addExcise, addMonths, addReceivable } from './addMonths.ts';
import { addOrders, addStock, addYields } from './addOrders.ts';
import { addWide, type OverviewDraft } from './addOverviewTable.ts';
import { addQuality } from './addQuality.ts';
import type { Overview } from './overview.ts';
import { OVERVIEW_WIDTHS, type OverviewTab } from './overviewTypes.ts';

/** The overview as cells and charts of a sheet; amounts are numbers in the workbook's currency, which is named once. */
export function overviewTab(overview: Overview): OverviewTab {
  const { shopName, day, books } = overview;
  const draft: OverviewDraft = { rows: [], heights: new Map(), wide: [], charts: [] };
  addWide(draft, shopName === '' ? 'Overview' : `Overview: ${shopName}`, 'title');
  addWide(
    draft,
    `As of ${day}. Amounts in ${books.currency}. Updating writes this sheet anew: keep notes of your own elsewhere.`,
    'note',
  );
  addOrders(draft, overview);
  addCapacity(draft, overview.week, overview);
  addMonths(draft, books);
  addExcise(draft, books);
  addReceivable(draft, books);
  addStock(draft, overview);
  addQuality(draft, overview.quality);
  addYields(draft, overview);
  return {
    ...draft,
    columnWidths: OVERVIEW_WIDTHS,
    moneyPlaces: CURRENCIES[books.currency].digits,
  };
}
