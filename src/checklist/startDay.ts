import { readTable } from '../../shared/book/reading/readTable.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { DayChoice, DayForm } from '../../shared/commands/checklistCommands.ts';
import { openOrders } from '../../shared/day/shop/dayOrders.ts';
import { keptPlan } from '../day/keptPlan.ts';
import { today } from '../platform/today.ts';
import { readCells } from '../platform/workbook.ts';

/** Page call: the orders that can be put into a pour day. */
export function startDay(): DayForm {
  const orders = readTable(TABLES.orders, readCells(TABLES.orders.sheet)).rows;
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
  return { kind: 'ok', today: today(), orders: choices, isFollowed: keptPlan() !== undefined };
}
