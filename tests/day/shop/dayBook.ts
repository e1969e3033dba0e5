import type { DayBook } from '../../../shared/book/book.ts';
import { type DemoChanges, demoBook } from '../../book/demoBook.ts';

type PersonRecord = DayBook['people'][number]['record'];

const PEOPLE: readonly PersonRecord[] = [
  { person: 'Ada', from: 480, to: 960, breakFrom: 720, breakTo: 750 },
  { person: 'Ben', from: 540, to: 1020, colors: 'no' },
];

/** The demo book with two people, or those that a test gives. */
export function dayBook(
  changes: DemoChanges & { readonly people?: readonly PersonRecord[] } = {},
): DayBook {
  const people = (changes.people ?? PEOPLE).map((record, place) => ({ row: place + 2, record }));
  return { ...demoBook(changes), people };
}
