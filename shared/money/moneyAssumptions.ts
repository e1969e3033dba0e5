import { type BookIndex, remember } from '../book/bookIndex.ts';
import { MONEY_SETTINGS } from '../book/settings/moneySettings.ts';
import { describeIn } from '../errors/describeIn.ts';

/** Settings of money that were refused and count at their default, in sentences. */
export function moneyAssumptions(index: BookIndex): readonly string[] {
  return remember(index, 'money assumptions', () => {
    const { problems, shop } = index.book;
    const settings = Object.values(MONEY_SETTINGS);
    return problems.flatMap(({ sheet, heading, error }) => {
      if (sheet !== 'Shop' || settings.every(({ label }) => label !== heading)) return [];
      return [`In Shop, ${describeIn(error, shop.units)}; its default is taken.`];
    });
  });
}
