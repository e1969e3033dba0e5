import type { Book, BookCells } from '../book/book.ts';
import type { TableKey } from '../book/tables.ts';
import type { TickedRow } from '../day/checklist/tickedRow.ts';
import type { FollowedDay } from '../day/shop/followedDay.ts';
import type { RunningTimer } from '../day/timers/timerTypes.ts';
import type { Refused } from '../errors/refuse.ts';
import type { AnswerGiven, CommandName, PayloadOf } from './commandTypes.ts';
import type { PayloadFields } from './readPayload.ts';
import type { Write } from './write.ts';

/** What a decision may ask of the moment it is made in; each answers the same all through one command. */
export interface Context {
  /** `yyyy-mm-dd` in the workbook's zone. */
  readonly today: () => string;
  /** `yyyy-mm-dd hh:mm` in the workbook's zone. */
  readonly minute: () => string;
  /** Milliseconds from 1970. */
  readonly instant: () => number;
  /** Seconds from midnight before a day, as a clock on the wall of the workbook's zone counts them. */
  readonly secondsSince: (firstDay: string) => number;
  /** A token that nothing else has. */
  readonly freshToken: () => string;
  /** Sheet and row of the current cell. */
  readonly selection: () => { readonly sheet: string; readonly row: number };
  /** Raw cells of a sheet that the command reads, heading row first. */
  readonly cells: (key: TableKey | 'shop') => BookCells['shop'];
  /** Texts of the sheet *Run sheet*; empty when none was made yet. */
  readonly runSheetTexts: () => readonly string[];
  /** Ticks of the checklist; none where there is no checklist. */
  readonly checklist: (firstDay: string) => readonly TickedRow[] | Refused;
  /** The plan of some days that is followed; undefined where none is. */
  readonly followedDay: () => FollowedDay | undefined;
  readonly timers: () => readonly RunningTimer[];
}

/**
 * A page that opens as a dialog with what it asks for, and with the answer where that is known already, so that nothing is worked out
 * again; or a sheet that comes to the front.
 */
export type Shown =
  | {
      readonly dialog:
        | 'RunSheet'
        | 'Heat'
        | 'Quality'
        | 'Causes'
        | 'PourDay'
        | 'Purchases'
        | 'Quote';
      readonly title: string;
      readonly request: object;
      readonly answer?: object;
    }
  | { readonly sheet: string };

/** What a command answers, what it writes, all of it or nothing, and what it shows afterwards. */
export interface Decision<Answer> {
  readonly kind: 'decided';
  readonly answer: Answer;
  readonly writes?: readonly Write[];
  readonly shows?: Shown;
}

/** What a page may ask: its payload, the tables it reads, and the decision it comes to. */
export interface Command {
  /** A `write` command runs under the document lock, from its reading to its last write. */
  readonly kind: 'read' | 'write';
  readonly payload: PayloadFields;
  readonly tables: readonly TableKey[];
  readonly decide: (asked: never, book: never, context: Context) => Decision<object> | Refused;
}

interface Declared<Name extends CommandName, Key extends TableKey> {
  readonly payload: PayloadFields<keyof PayloadOf<Name> & string>;
  readonly tables: readonly Key[];
}

/** Declares a command that writes nothing. */
export function readCommand<Name extends CommandName, Key extends TableKey = never>(
  declared: Declared<Name, Key> & {
    readonly answer: (
      asked: PayloadOf<Name>,
      book: Book<Key>,
      context: Context,
    ) => AnswerGiven<Name> | Refused;
  },
): Command {
  const { payload, tables, answer } = declared;
  const decide = (asked: PayloadOf<Name>, book: Book<Key>, context: Context) =>
    decided(answer(asked, book, context));
  return { kind: 'read', payload, tables, decide };
}

/** Declares a command that opens a dialog once what it is about is found. */
export function showCommand<Name extends CommandName, Key extends TableKey = never>(
  declared: Declared<Name, Key> & {
    readonly decide: (
      asked: PayloadOf<Name>,
      book: Book<Key>,
      context: Context,
    ) => Decision<AnswerGiven<Name>> | Refused;
  },
): Command {
  return { kind: 'read', ...declared };
}

/** Declares a command that writes: book and request in, rows to write and answer out. */
export function writeCommand<Name extends CommandName, Key extends TableKey = never>(
  declared: Declared<Name, Key> & {
    readonly decide: (
      asked: PayloadOf<Name>,
      book: Book<Key>,
      context: Context,
    ) => Decision<AnswerGiven<Name>> | Refused;
  },
): Command {
  return { kind: 'write', ...declared };
}

/** A decision that writes nothing, or the refusal it was. */
export function decided<Answer extends object>(
  answer: Answer | Refused,
  rest: Pick<Decision<Answer>, 'writes' | 'shows'> = {},
): Decision<Answer> | Refused {
  return isRefused(answer) ? answer : { kind: 'decided', answer, ...rest };
}

export function isRefused(answer: object): answer is Refused {
  return 'kind' in answer && answer.kind === 'refused';
}
