import type { Column } from '../book/column.ts';
import type { Setting } from '../book/settings/setting.ts';
import { SETTINGS } from '../book/settings/settings.ts';
import { TABLES } from '../book/tables.ts';
import type { Bounds } from '../errors/requireNumber.ts';
import { MEASURES, type UnitSystem } from '../units/measures.ts';
import type { UnitName } from '../units/units.ts';
import { FIGURE_HOMES, type FigureName } from './figureCell.ts';

/** Bounds of the cell that holds a figure, in engine units, and the unit that a system writes it in. */
export function figureLimits(
  name: FigureName,
  system: UnitSystem,
): {
  readonly bounds: Bounds;
  readonly unit: UnitName | undefined;
} {
  const home = FIGURE_HOMES[name];
  const columns: Readonly<Record<string, Column>> =
    home.sheet === 'shop' ? {} : TABLES[home.sheet].columns;
  const declared: Setting | Column | undefined =
    home.sheet === 'shop' ? SETTINGS[home.key] : columns[home.key];
  if (declared?.kind !== 'number') return { bounds: {}, unit: undefined };
  const { bounds = {}, measure } = declared;
  return { bounds, unit: measure && MEASURES[measure][system] };
}
