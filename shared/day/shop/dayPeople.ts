import type { DayBook } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import type { WORK_DAYS } from '../../book/tables/people.ts';
import { type Person, SKILLS, type Skill } from '../planning/shopDay.ts';
import { anyHours, type Shift, weekHours } from '../planning/weekHours.ts';
import type { DaysAsked } from './daysAsked.ts';

type PersonRecord = DayBook['people'][number]['record'];

/** Who is there when nobody is listed: eight to half past four with half an hour off. */
const NOBODY_LISTED: PersonRecord = {
  person: 'Pourer',
  days: 'weekdays',
  from: 8 * 60,
  to: 16.5 * 60,
  breakFrom: 12 * 60,
  breakTo: 12.5 * 60,
};

export interface DayPeople {
  readonly people: readonly Person[];
  /** Lines that were left out and what was taken instead, in sentences */
  readonly assumptions: readonly string[];
}

/** The people of the book with their hours over the days; lines of one name add up. */
export function dayPeople({ people: rows }: Pick<DayBook, 'people'>, asked: DaysAsked): DayPeople {
  if (rows.length === 0)
    return {
      people: [personOf('Pourer', [NOBODY_LISTED], asked)],
      assumptions: [
        'People is empty: planned for one person who does everything, Monday to Friday, 8:00 to 16:30 with half an hour off at noon.',
      ],
    };
  const assumptions: string[] = [];
  const lines = new Map<string, PersonRecord[]>();
  for (const { row, record } of rows) {
    const why = unfitLine(record);
    if (why !== undefined) {
      assumptions.push(`In People, row ${row}: ${why}; the line was left out.`);
      continue;
    }
    const key = nameKey(record.person);
    lines.set(key, [...(lines.get(key) ?? []), record]);
  }
  const people = [...lines.values()].map((own) => personOf(own[0]?.person ?? '', own, asked));
  return { people, assumptions };
}

function unfitLine({ person, from, to, breakFrom, breakTo }: PersonRecord): string | undefined {
  if (person === undefined) return 'person must be given';
  if (from === undefined || to === undefined) return 'from and to must be given';
  if (to <= from) return 'to must be later than from';
  if ((breakFrom === undefined) !== (breakTo === undefined))
    return 'break from and break to must be given both or not at all';
  if (breakFrom === undefined || breakTo === undefined) return undefined;
  return breakFrom >= from && breakTo > breakFrom && breakTo <= to
    ? undefined
    : 'the break must lie within the hours';
}

function personOf(
  name: string,
  lines: readonly PersonRecord[],
  { firstDay, days }: DaysAsked,
): Person {
  const skills = SKILLS.filter((skill) => lines.some((line) => hasSkill(line, skill)));
  const hours = lines.map((line) => weekHours(weekOf(line, weekdayOf(firstDay)), days));
  return { name, skills, hours: anyHours(hours) };
}

function hasSkill({ colors, cooks, pours, finishes }: PersonRecord, skill: Skill): boolean {
  const said = { color: colors, cook: cooks, pour: pours, finish: finishes }[skill];
  return said !== 'no';
}

/** 0 is Sunday. */
const WEEKDAY: Partial<Record<(typeof WORK_DAYS)[number], number>> = {
  Sunday: 0,
  Monday: 1,
  Tuesday: 2,
  Wednesday: 3,
  Thursday: 4,
  Friday: 5,
  Saturday: 6,
};

/** A line's shift on the seven days from the first one on. */
function weekOf(line: PersonRecord, first: number): readonly (Shift | undefined)[] {
  const { from = 0, to = 0, breakFrom, breakTo, days = 'weekdays' } = line;
  const shift: Shift = {
    from: from * 60,
    to: to * 60,
    ...(breakFrom !== undefined &&
      breakTo !== undefined && { breaks: [{ from: breakFrom * 60, to: breakTo * 60 }] }),
  };
  return Array.from({ length: 7 }, (_, place) => {
    const weekday = (first + place) % 7;
    const isWorked =
      days === 'every day' ||
      (days === 'weekdays' ? weekday >= 1 && weekday <= 5 : WEEKDAY[days] === weekday);
    return isWorked ? shift : undefined;
  });
}

function weekdayOf(day: string): number {
  return new Date(`${day}T00:00:00Z`).getUTCDay();
}
