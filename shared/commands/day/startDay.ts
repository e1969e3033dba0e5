import { openOrders } from '../../day/shop/dayOrders.ts';
import type { DayChoice } from '../checklistCommands.ts';
import { readCommand } from '../command.ts';

/** The orders that can be put into a pour day. */
export const startDay = readCommand<'startDay', 'orders'>({
  payload: {},
  tables: ['orders'],
  answer: (_asked, { orders }, context) => {
    const choices = openOrders({ orders }).flatMap((name): readonly DayChoice[] => {
      const row = orders.find(({ record }) => record.order === name);
      if (row === undefined) return [];
      const { due, mold = '', pattern = '', quantity } = row.record;
      return [
        {
          order: name,
          mold,
          pattern,
          ...(due !== undefined && { due }),
          ...(quantity !== undefined && { quantity }),
        },
      ];
    });
    const isFollowed = context.followedDay() !== undefined;
    return { kind: 'ok', today: context.today(), orders: choices, isFollowed };
  },
});
