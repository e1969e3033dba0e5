import {
  SETTINGS,
  type SettingKey,
  SHOP_FIGURES,
  type ShopFigureKey,
} from '../settings/settings.ts';
import { TABLES, type TableKey } from '../tables.ts';

/** What each column and setting is for, by the keys of their declarations. */
export interface BookNotes {
  readonly columns: Readonly<Record<TableKey, Readonly<Record<string, string>>>>;
  readonly settings: Readonly<Record<SettingKey | ShopFigureKey, string>>;
}

/** The texts of the declarations, gathered at build time: the running script carries the declarations without them. */
export function bookNotes(): BookNotes {
  const columns = Object.entries(TABLES).map(([key, { columns: declared }]) => [
    key,
    Object.fromEntries(Object.entries(declared).map(([name, { about }]) => [name, about])),
  ]);
  const settings = Object.entries({ ...SETTINGS, ...SHOP_FIGURES }).map(([key, { about }]) => [
    key,
    about,
  ]);
  return { columns: Object.fromEntries(columns), settings: Object.fromEntries(settings) };
}
