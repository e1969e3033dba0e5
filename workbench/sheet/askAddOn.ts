import type { AnswerOf, CommandName, PayloadOf } from '../../shared/commands/commandTypes.ts';
import type { Host } from '../host/Host.ts';

type Good<V extends CommandName> = Extract<AnswerOf<V>, { readonly kind: 'ok' }>;

/**
 * Calls a verb of the built add-on, as a page would.
 * @throws Error with the add-on's sentences when it refuses
 */
export async function askAddOn<V extends CommandName>(
  host: Host,
  verb: V,
  payload: PayloadOf<V>,
): Promise<Good<V>> {
  const from = { window: 'sheet', selection: { sheet: 'Orders', range: 'A1' } };
  const result = await host.call(verb, [payload], from);
  if (result.kind === 'failure') throw new Error(result.message);
  const answer = result.value as AnswerOf<V>; // the verb's own answer, as its type says
  if (answer.kind === 'refused')
    throw new Error(answer.problems.map(({ text }) => text).join('; '));
  return answer as Good<V>; // told apart by its kind
}
