import type { AnswerOf, CommandName, PayloadOf } from '../../shared/commands/commandTypes.ts';
import { call } from '../page/call.ts';
import { sentence } from '../page/sentence.ts';

type Good<V extends CommandName> = Extract<AnswerOf<V>, { readonly kind: 'ok' }>;

/**
 * Runs a dialog's page: asks the verb about what the dialog was opened for, draws the answer, and lets it be printed then.
 * The request stands behind the script in the page, so the page must be whole first.
 * @param draw - puts the answer into the page
 */
export function openDialog<V extends CommandName>(verb: V, draw: (answer: Good<V>) => void): void {
  const start = () => void fill(verb, draw);
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', start);
  else start();
}

async function fill<V extends CommandName>(
  verb: V,
  draw: (answer: Good<V>) => void,
): Promise<void> {
  const print = document.getElementById('print');
  const main = document.querySelector('main');
  print?.addEventListener('click', () => window.print());
  main?.setAttribute('aria-busy', 'true');
  try {
    const answer = await call(verb, requestOf<V>());
    if (answer.kind === 'refused') {
      say(answer.problems.map(({ text }) => sentence(text)).join(' '));
      return;
    }
    draw(answer as Good<V>); // told apart by its kind
    print?.removeAttribute('disabled');
    say('');
  } catch (error) {
    say(sentence(error instanceof Error ? error.message : String(error)));
  } finally {
    main?.removeAttribute('aria-busy');
  }
}

/** What the dialog was opened for; the verb checks what it gets. */
function requestOf<V extends CommandName>(): PayloadOf<V> {
  const text = document.getElementById('request')?.getAttribute('data-request') ?? '';
  return JSON.parse(decodeURIComponent(text)) as PayloadOf<V>; // checked by the verb
}

function say(words: string): void {
  const status = document.getElementById('status');
  if (status) status.textContent = words;
}
