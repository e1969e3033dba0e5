import type { AnswerOf, CommandName, PayloadOf } from '../../shared/commands/commandTypes.ts';
import type { Problem } from '../../shared/errors/refuse.ts';
import { FORM_KEYS } from '../../shared/log/formColumn.ts';
import { GOODS_KEYS, PRICING_KEYS } from '../../shared/money/quote/quoteFieldTypes.ts';
import { fieldsOfUse } from '../../shared/money/stock/recordsOfUse.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { call } from '../page/call.ts';
import type { PageState } from './pageState.ts';
import type { Store } from './store.ts';
import { type View, withProblems } from './view.ts';

type Good<V extends CommandName> = Extract<AnswerOf<V>, { readonly kind: 'ok' }>;

/**
 * Calls a verb, once at a time, and shows that it runs. A refusal or a failure becomes a notice; nothing typed is touched.
 * @returns the answer, or undefined when there is none or the page was busy already
 */
export async function work<V extends CommandName>(
  store: Store,
  busy: string,
  verb: V,
  payload: PayloadOf<V>,
): Promise<Good<V> | undefined> {
  if (store.get().busy !== '') return undefined;
  store.set({ busy, notice: undefined, view: withProblems(store.get().view, []) });
  try {
    const answer = await call(verb, payload);
    if (answer.kind === 'ok') {
      store.follow({ busy: '' });
      return answer as Good<V>; // told apart by its kind
    }
    const notice = {
      kind: 'problem',
      texts: refusalTexts(store.get().view, answer.problems),
    } as const;
    store.set({ busy: '', notice, view: withProblems(store.get().view, answer.problems) });
  } catch (error) {
    store.set({ busy: '', notice: { kind: 'problem', texts: [failureText(error)] } });
  }
  return undefined;
}

/** Messages of the form's fields stand at the fields; here only their number does. */
function refusalTexts(view: View, problems: readonly Problem[]): readonly string[] {
  const keys = formKeys(view);
  const others = problems.filter(({ field }) => !keys.includes(field));
  const atFields = problems.length - others.length;
  return [
    ...(atFields === 0
      ? []
      : [`${countText(atFields, 'field')} of the form; each says what it needs.`]),
    ...others.map(({ text }) => sentence(text)),
  ];
}

/** Fields of the form on show, each of which shows its own message. */
function formKeys(view: View): readonly string[] {
  switch (view.kind) {
    case 'log':
      return FORM_KEYS;
    case 'quote':
      return [...GOODS_KEYS, ...PRICING_KEYS];
    case 'use':
      return fieldsOfUse(view.use);
    default:
      return [];
  }
}

/** What is said of a thing that is done. */
export function done(...texts: readonly string[]): NonNullable<PageState['notice']> {
  return { kind: 'done', texts };
}

function failureText(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  return `${sentence(text)} Nothing you typed is lost: try again.`;
}
