import { hoursText } from '../../words/hoursText.ts';
import { listText } from '../../words/quantityText.ts';
import type { SavingChange } from '../shop/savingChanges.ts';

/** The smallest change that has a late order packed in time. */
export function savingText({ order, change }: SavingChange): string {
  switch (change.kind) {
    case 'first':
      return change.later.length === 0
        ? `Order ${order} is in time if it goes first; no other order is late by that.`
        : `Order ${order} is in time if it goes first, but then ${listText(change.later)} ${change.later.length === 1 ? 'is' : 'are'} later.`;
    case 'longer':
      return `Order ${order} is in time if everybody works ${hoursText(change.by)} longer every day.`;
    case 'one more': {
      const { of, name, count } = change;
      if (of === 'person') return `Order ${order} is in time with one more person like ${name}.`;
      const what = count === 1 ? `one more ${of}` : `${count} more ${of}s`;
      return `Order ${order} is in time with ${what} ${name}, bought or borrowed.`;
    }
    case 'due':
      return `Nothing small saves order ${order}: ask the customer for ${change.on}.`;
  }
}
