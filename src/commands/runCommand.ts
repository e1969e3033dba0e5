import { type BookCells, readBook } from '../../shared/book/book.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { ALL_COMMANDS } from '../../shared/commands/allCommands.ts';
import {
  type Command,
  type Decision,
  isRefused,
  type Shown,
} from '../../shared/commands/command.ts';
import type { CommandName } from '../../shared/commands/commands.ts';
import { placeWrites } from '../../shared/commands/placeWrites.ts';
import { readPayload } from '../../shared/commands/readPayload.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { requestDialog } from '../platform/requestDialog.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { findSheet, readCells, workbook } from '../platform/workbook.ts';
import { commandContext } from './commandContext.ts';
import { write } from './write.ts';

/** How often a command is decided anew because people typed rows under a table meanwhile. */
const TRIES = 3;

/**
 * What a page may ask, run by its name: the payload is checked, the command's tables are read, its decision is made, what
 * it wants written is found on the sheets and then written, all of it or nothing. A command that writes does so under the document lock, so that
 * everything it decided by still stands.
 */
export function runCommand(name: CommandName, payload: unknown): object {
  const command = ALL_COMMANDS[name];
  const read = readPayload(command.payload, payload);
  if (read.kind === 'refused') return read;
  const work = () => carryOut(command, read.value);
  const done = command.kind === 'write' ? withDocumentLock(work) : work();
  if (isRefused(done)) return done;
  if (done.shows !== undefined) show(done.shows);
  return done.answer;
}

function carryOut(command: Command, asked: object): Decision<object> | Refused {
  for (let attempt = 1; attempt <= TRIES; attempt += 1) {
    const done = tryOnce(command, asked);
    if (done !== 'rows were added') return done;
  }
  return refuse(
    '',
    'Somebody is typing rows below the table just now. Nothing was changed: try again in a moment.',
  );
}

function tryOnce(command: Command, asked: object): Decision<object> | Refused | 'rows were added' {
  const cells = new Map<string, BookCells['shop']>();
  if (command.tables.length > 0) cells.set('shop', readCells('Shop'));
  for (const key of command.tables) cells.set(key, readCells(TABLES[key].sheet));
  const cellsOf = (key: TableKey | 'shop') => cells.get(key) ?? [];
  const book = bookOf(command, cellsOf);
  const decision = command.decide(asked as never, book as never, commandContext(cellsOf)); // checked against the declared payload; read by the declared tables
  if (isRefused(decision) || decision.writes === undefined) return decision;
  const placed = placeWrites(decision.writes, cellsOf, book.shop.units);
  if ('kind' in placed) return placed;
  const stopped = write(placed);
  return stopped ?? decision;
}

function bookOf({ tables }: Command, cells: (key: TableKey | 'shop') => BookCells['shop']) {
  const keys = [...tables, 'shop'] as const;
  return readBook(
    tables,
    Object.fromEntries(keys.map((key) => [key, cells(key)])) as BookCells<TableKey>,
  ); // shop and every table
}

function show(shown: Shown): void {
  if ('dialog' in shown) {
    requestDialog(shown.dialog, shown.title, shown.request);
    return;
  }
  const sheet = findSheet(shown.sheet);
  if (sheet) workbook().setActiveSheet(sheet);
}
