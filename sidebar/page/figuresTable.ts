import { moneyTable } from './moneyTable.ts';

/** A table of figures in small print, with a name for those who do not see what stands above it. */
export function figuresTable(name: string, table: Parameters<typeof moneyTable>[0]): HTMLElement {
  const made = moneyTable(table);
  made.classList.add('figures');
  made.setAttribute('aria-label', name);
  return made;
}
