import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import { POUR_LOG } from '../../../shared/book/tables/pourLog.ts';

type LogRow = Readonly<Record<string, string | number>>;

const SOUND = { run: 'R-1', order: '1', mold: 'Stick', pattern: 'Line', poured: 10, good: 9 };

/** The sheet *Pour log* as a cell's range hands it over: headings in US units, then rows that are sound where nothing else is said. */
export function logCells(rows: readonly LogRow[]): readonly (readonly (string | number)[])[] {
  const columns = Object.entries(POUR_LOG.columns);
  const lines = rows.map((row) => {
    const cells: LogRow = { ...SOUND, ...row };
    return Object.freeze(columns.map(([key]) => cells[key] ?? ''));
  });
  return Object.freeze([columns.map(([, column]) => headingOf(column, 'US')), ...lines]);
}

/** The sheet *Shop* with these settings. */
export function shopCells(
  settings: Readonly<Record<string, string | number>> = {},
): readonly (readonly (string | number)[])[] {
  return [
    ['Setting', 'Value', 'Unit'],
    ...Object.entries(settings).map(([label, value]) => [label, value, '']),
  ];
}
