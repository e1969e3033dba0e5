import type { BookCells } from '../../shared/book/book.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { ALL_COMMANDS } from '../../shared/commands/allCommands.ts';
import { type Command, isRefused, type Shown } from '../../shared/commands/command.ts';
import type { CommandName } from '../../shared/commands/commandTypes.ts';
import { decideCommand, type PlacedDecision } from '../../shared/commands/decideCommand.ts';
import { readPayload } from '../../shared/commands/readPayload.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { plainDates } from '../platform/plainDates.ts';
import { requestDialog } from '../platform/requestDialog.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { findSheet, readCells, spreadsheetZone, workbook } from '../platform/workbook.ts';
import { commandContext } from './commandContext.ts';
import { write } from './write.ts';

/** How often a command is decided when people type rows under a table meanwhile. */
const TRIES = 3;

/**
 * What a page may ask, run by its name: the payload is checked, the command's tables are read, its decision is made, and what it
 * wants written is found on the sheets and then written, all of it or nothing. A command that writes does so under the document
 * lock, so that everything it was decided by still stands.
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

function carryOut(command: Command, asked: object): PlacedDecision | Refused {
  for (let attempt = 1; attempt <= TRIES; attempt += 1) {
    const decision = decideCommand(command, asked, commandContext(readTables(command)));
    if (isRefused(decision)) return decision;
    const stopped = write(decision.writes);
    if (stopped === undefined) return decision;
    if (stopped !== 'rows were added') return stopped;
  }
  return refuse(
    '',
    'Somebody is typing rows below the table just now. Nothing was changed: try again in a moment.',
  );
}

/** The cells of a command's sheets, one read each; one that reads no table reads nothing. */
function readTables({ tables }: Command): (key: keyof typeof TABLES | 'shop') => BookCells['shop'] {
  const cells = new Map<string, BookCells['shop']>();
  const dateText = plainDates(spreadsheetZone);
  if (tables.length > 0) cells.set('shop', readCells('Shop', dateText));
  for (const key of tables) cells.set(key, readCells(TABLES[key].sheet, dateText));
  return (key) => cells.get(key) ?? [];
}

function show(shown: Shown): void {
  if ('dialog' in shown) {
    requestDialog(shown.dialog, shown.title, shown);
    return;
  }
  const sheet = findSheet(shown.sheet);
  if (sheet) workbook().setActiveSheet(sheet);
}
