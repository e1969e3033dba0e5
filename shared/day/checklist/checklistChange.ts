import type { ChecklistRow } from './checklistRow.ts';

/** What must be written so that a sheet holds the wanted lines; ticks are never written. */
export interface ChecklistChange {
  /** Line of the sheet by line: the wanted row that stands there, or undefined for one that is no longer planned but was ticked */
  readonly inPlace: readonly (ChecklistRow | undefined)[];
  /** Lines of the sheet to take out, from 0, from the last to the first: no longer planned, and not ticked or of a day that is over */
  readonly removed: readonly number[];
  /** Behind the lines of the sheet */
  readonly added: readonly ChecklistRow[];
}

/** A line as it stands on the sheet. */
export interface PresentLine {
  readonly id: string;
  readonly isTicked: boolean;
  /** Planned for a day before the first of the wanted plan */
  readonly isOver: boolean;
}

/**
 * Compares a sheet with a plan by the ids of their lines. A line stays where it is and keeps its tick; the sheet is sorted afterwards.
 * @param present lines of the sheet from its first; an id that stands there twice counts once, its copies go unless they are ticked
 */
export function checklistChange(
  present: readonly PresentLine[],
  wanted: readonly ChecklistRow[],
): ChecklistChange {
  const byId = new Map(wanted.map((row) => [row.id, row]));
  const seen = new Set<string>();
  const inPlace: (ChecklistRow | undefined)[] = [];
  const removed: number[] = [];
  present.forEach(({ id, isTicked, isOver }, line) => {
    const row = seen.has(id) ? undefined : byId.get(id);
    if (row !== undefined) seen.add(id);
    if (row === undefined && (!isTicked || isOver)) removed.unshift(line);
    else inPlace.push(row);
  });
  return { inPlace, removed, added: wanted.filter(({ id }) => !seen.has(id)) };
}
