import type { UnitSystem } from '../../units/measures.ts';

/** The sheet of the checklist. */
export const CHECKLIST = 'Checklist';

interface ChecklistColumn {
  readonly heading: string;
  /** [px]; the first five fit a phone held upright */
  readonly width: number;
  readonly format: 'text' | 'moment' | 'clock' | 'count' | 'box';
  readonly isWrapped?: true;
}

/** In order. Ticks, their times and names belong to people; everything else is written anew by every plan. */
export const CHECKLIST_COLUMNS = {
  done: { heading: 'Done', width: 46, format: 'box' },
  from: { heading: 'From', width: 92, format: 'moment' },
  text: { heading: 'What to do', width: 168, format: 'text', isWrapped: true },
  latest: { heading: 'Latest', width: 62, format: 'clock' },
  person: { heading: 'Who', width: 46, format: 'text' },
  at: { heading: 'Done at', width: 92, format: 'moment' },
  who: { heading: 'Done by', width: 70, format: 'text' },
  to: { heading: 'To', width: 92, format: 'moment' },
  order: { heading: 'Order', width: 60, format: 'text' },
  id: { heading: 'Line', width: 210, format: 'text' },
  place: { heading: 'No.', width: 44, format: 'count' },
} as const satisfies Readonly<Record<string, ChecklistColumn>>;

export type ChecklistKey = keyof typeof CHECKLIST_COLUMNS;

export const CHECKLIST_KEYS = Object.keys(CHECKLIST_COLUMNS) as readonly ChecklistKey[]; // keys of the one list of them

/** How a column shows its cells. */
export function checklistFormat(key: ChecklistKey, system: UnitSystem): string {
  const clock = system === 'metric' ? 'H:mm' : 'h:mm am/pm';
  switch (CHECKLIST_COLUMNS[key].format) {
    case 'moment':
      return `ddd ${clock}`;
    case 'clock':
      return clock;
    case 'count':
      return '0';
    case 'text':
      return '@';
    case 'box':
      return 'General';
  }
}

/** Letters in one line of *What to do*, words kept whole, and height of a line [px]. */
const LETTERS = 21;
const LINE = 19;
/** A box is hit with a gloved finger. */
const LEAST = 40;

/** Height of a line of the checklist [px]. */
export function checklistHeight(text: string): number {
  const lines = text
    .split('\n')
    .reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / LETTERS)), 0);
  return Math.max(LEAST, lines * LINE + 8);
}
