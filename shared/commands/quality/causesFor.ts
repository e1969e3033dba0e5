import { type Book, PLAN_TABLES } from '../../book/book.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import { causesSummary } from '../../outcomes/causes/causesSummary.ts';
import { type Context, decided, readCommand, showCommand } from '../command.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';

const PAYLOAD = { row: OPTIONAL_TEXT, from: OPTIONAL_TEXT } as const;

/**
 * The likely causes of what came out bad in one round, and the bad rounds of the log; without a row the round of the current cell, else
 * the last bad one.
 */
export const causesFor = readCommand<'causesFor', (typeof PLAN_TABLES)[number]>({
  payload: PAYLOAD,
  tables: PLAN_TABLES,
  answer: ({ row: typed, from }, book, context) => {
    if (typed && !/^\d{1,7}$/.test(typed))
      return refuse('row', `row must be a whole number, got "${typed}"`);
    if (from && from !== 'selected')
      return refuse('from', `from must be one of selected, got "${from}"`);
    const selected = () => selectedRow(context);
    const row = typed
      ? Number(typed)
      : from === 'selected'
        ? selected()
        : roundIn(book, selected());
    if (typeof row === 'object') return row;
    const summary = causesSummary(book, row);
    if (summary === undefined)
      return refuse('', `Row ${row} of Pour log is blank: select a row that holds a round.`);
    return { kind: 'ok', ...summary };
  },
});

/** Opens the dialog that shows and prints the causes of a round; it asks for them itself. */
export const showCauses = showCommand<'showCauses'>({
  payload: PAYLOAD,
  tables: [],
  decide: (request) =>
    decided({ kind: 'ok' }, { shows: { dialog: 'Causes', title: 'What went wrong', request } }),
});

/** The row where it holds a round of the log. */
function roundIn({ pourLog }: Book, selected: number | Refused): number | undefined {
  return typeof selected === 'number'
    ? pourLog.find(({ row }) => row === selected)?.row
    : undefined;
}

/** The row of the current cell, or in plain words what to select. */
function selectedRow({ selection }: Context): number | Refused {
  const { sheet, row } = selection();
  if (sheet !== 'Pour log') return refuse('', 'Select a row on the sheet Pour log first.');
  return row === 1
    ? refuse('', 'The heading row is selected: select a row that holds a round.')
    : row;
}
