import type { Book } from '../../book/book.ts';
import { indexBook, nameKey } from '../../book/bookIndex.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import { InputError } from '../../errors/InputError.ts';
import { badRounds, namedRound } from './badRounds.ts';
import type { Diagnosis } from './diagnose.ts';
import { diagnoseRow, type RowDiagnosis } from './diagnoseRow.ts';
import { NOT_BY_HEAT, unreadText } from './unreadText.ts';

/** Takes the last round that came out bad. */
export const LAST_BAD = 'last';

const HEADINGS = [
  'Round',
  'Defect',
  'Pieces',
  'Likely cause',
  'What the record shows',
  'What to do',
] as const;

type Cells = readonly (string | number)[];
type Diagnosed = Extract<RowDiagnosis, { readonly kind: 'diagnosed' }>;

/**
 * Likely causes of what came out bad, headings first, for each defect the likeliest cause first.
 * @param which a run of the log, or {@link LAST_BAD}
 * @throws InputError on a run that the log does not hold
 */
export function causeCells(book: Book, which: string): readonly Cells[] {
  const rounds = roundsOf(book, which);
  if (rounds.length === 0) return [HEADINGS, note('', 'nothing came out bad')];
  const index = indexBook(book);
  return [
    HEADINGS,
    ...rounds.flatMap((one) => {
      const { label } = namedRound(one);
      const found = diagnoseRow(index, one.record);
      return found.kind === 'no plan'
        ? [[label, '', '', 'no plan to hold it against', found.because, '']]
        : cellsOf(label, found);
    }),
  ];
}

function roundsOf(book: Book, which: string): Book['pourLog'] {
  const bad = badRounds(book);
  if (nameKey(which) === LAST_BAD) return bad.slice(0, 1);
  const isOfRun = ({ record }: Book['pourLog'][number]) => nameKey(record.run) === nameKey(which);
  if (!currentLogRows(book.pourLog).some(isOfRun))
    throw new InputError({
      field: 'run',
      rule: { kind: 'known', where: 'Pour log' },
      value: which,
    });
  return bad.filter(isOfRun).reverse();
}

function cellsOf(label: string, found: Diagnosed): readonly Cells[] {
  return [
    ...found.diagnoses.flatMap((one) => cellsOfDefect(label, one, found)),
    ...(found.unnamed === 0
      ? []
      : [[label, 'not named', found.unnamed, '', '', 'name the defect in the log']]),
  ];
}

function cellsOfDefect(
  label: string,
  { name, count, verdict, causes, checks }: Diagnosis,
  found: Diagnosed,
): readonly Cells[] {
  if (verdict === 'explained')
    return causes.map(({ cause, because, cure }) => [label, name, count, cause, because, cure]);
  const cause = verdict === 'unread' ? unreadText(found) : NOT_BY_HEAT;
  return [[label, name, count, cause, found.record ?? '', `check: ${checks.join('; ')}`]];
}

function note(label: string, text: string): Cells {
  return [label, text, '', '', '', ''];
}
