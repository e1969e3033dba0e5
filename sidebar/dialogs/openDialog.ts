import type { AnswerOf, CommandName, PayloadOf } from '../../shared/commands/commandTypes.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { call } from '../page/call.ts';

type Good<Name extends CommandName> = Extract<AnswerOf<Name>, { readonly kind: 'ok' }>;

/**
 * Runs a dialog's page: asks the command about what the dialog was opened for, draws the answer, and lets it be printed then.
 * The request stands behind the script in the page, so the page must be whole first.
 * @param draw - puts the answer into the page
 */
export function openDialog<Name extends CommandName>(
  command: Name,
  draw: (answer: Good<Name>) => void,
): void {
  const start = () => void fill(command, draw);
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', start);
  else start();
}

async function fill<Name extends CommandName>(
  command: Name,
  draw: (answer: Good<Name>) => void,
): Promise<void> {
  const print = document.getElementById('print');
  const main = document.querySelector('main');
  print?.addEventListener('click', () => window.print());
  main?.setAttribute('aria-busy', 'true');
  try {
    const answer =
      answerOf<Name>() ?? (await call(command, handed('data-request') as PayloadOf<Name>)); // the command checks it
    if (answer.kind === 'refused') {
      say(answer.problems.map(({ text }) => sentence(text)).join(' '));
      return;
    }
    draw(answer as Good<Name>); // told apart by its kind
    print?.removeAttribute('disabled');
    say('');
  } catch (error) {
    say(sentence(error instanceof Error ? error.message : String(error)));
  } finally {
    main?.removeAttribute('aria-busy');
  }
}

/** The answer that the dialog was opened with, where it was. */
function answerOf<Name extends CommandName>(): AnswerOf<Name> | undefined {
  const request = document.getElementById('request');
  return request?.hasAttribute('data-answer')
    ? (handed('data-answer') as AnswerOf<Name>)
    : undefined; // of the same command
}

function handed(name: 'data-request' | 'data-answer'): unknown {
  const text = document.getElementById('request')?.getAttribute(name) ?? '';
  return JSON.parse(decodeURIComponent(text));
}

function say(words: string): void {
  const status = document.getElementById('status');
  if (status) status.textContent = words;
}
