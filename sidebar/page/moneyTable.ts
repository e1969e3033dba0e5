import { el } from '../page/el.ts';

interface MoneyTable {
  readonly heads?: readonly string[];
  /** Words first, then amounts. */
  readonly rows: readonly (readonly string[])[];
  /** What the rows add up to, set apart. */
  readonly sums?: readonly (readonly string[])[];
}

/** Words with their amounts, the amounts one below the other. */
export function moneyTable({ heads = [], rows, sums = [] }: MoneyTable): HTMLElement {
  const head = el('tr', {}, ...heads.map((text) => el('th', { scope: 'col' }, text)));
  return el(
    'table',
    { class: 'money' },
    ...(heads.length === 0 ? [] : [el('thead', {}, head)]),
    el('tbody', {}, ...rows.map(rowOf)),
    ...(sums.length === 0 ? [] : [el('tfoot', {}, ...sums.map(rowOf))]),
  );
}

function rowOf([words = '', ...amounts]: readonly string[]): HTMLElement {
  return el(
    'tr',
    {},
    el('th', { scope: 'row' }, words),
    ...amounts.map((amount) => el('td', {}, amount)),
  );
}
