import type { Connection } from '../connection.ts';
import type { Grid } from './gridTypes.ts';

export interface CellLine {
  /** Looks at the selected cell again. */
  look(): void;
  /** The server's word on why a cell shows an error. */
  tell(sheet: string, cell: string, message: string | undefined): void;
}

/** The line above the grid: why the selected cell shows an error, or else its note. */
export function cellLine(place: HTMLElement, grid: Grid, connection: Connection): CellLine {
  let looking = '';

  function show(kind: 'error' | 'note', text: string | undefined) {
    place.hidden = text === undefined;
    place.dataset['kind'] = kind;
    place.textContent = text ?? '';
  }

  return {
    look: () => {
      const { sheet, range } = grid.selection();
      const cell = range.split(':')[0] ?? 'A1';
      const note = grid.note(sheet, cell);
      looking = `${sheet}!${cell}`;
      show('note', note === undefined ? undefined : `${cell}: ${note}`);
      if (grid.shown(sheet, cell).startsWith('#')) connection.send({ kind: 'look', sheet, cell });
    },
    tell: (sheet, cell, message) => {
      if (message === undefined || looking !== `${sheet}!${cell}`) return;
      show('error', `${cell}: ${message}`);
    },
  };
}
