import { nameKey } from '../../book/bookIndex.ts';

/**
 * Who ticked, as *People* names them: somebody whose name, or its first word, stands before the @ of the address. The platform tells the
 * owner's address and nobody else's, so an address that is nobody's there says nothing.
 * @param email - `""` where the platform does not tell
 * @param people - names of the sheet *People*
 */
export function tickedBy(email: string, people: readonly string[]): string {
  const account = lettersOf(email.split('@')[0] ?? '');
  if (account === '') return '';
  const named = people.filter((name) =>
    [name, name.trim().split(/\s/)[0] ?? ''].some((one) => lettersOf(one) === account),
  );
  const [first] = named;
  return first !== undefined && named.every((name) => nameKey(name) === nameKey(first))
    ? first
    : '';
}

function lettersOf(text: string): string {
  return text.toLowerCase().replace(/[^\p{Letter}\p{Number}]/gu, '');
}
