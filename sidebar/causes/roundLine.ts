import type { NamedRound } from '../../shared/outcomes/causes/badRounds.ts';

/** A round in a line: `Row 13, R-1002 round 1, 2026-11-05 09:49: 4 of 12 good`. */
export function roundLine({ row, label, loggedAt, good, poured }: NamedRound): string {
  const parts = [`Row ${row}`, label, loggedAt].filter((part) => part !== '');
  return `${parts.join(', ')}: ${good} of ${poured} good`;
}
