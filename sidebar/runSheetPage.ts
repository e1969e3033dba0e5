import { runSheetElements } from '../shared/runSheet/runSheetElements.ts';
import type { RunPayload } from '../shared/verbs/verbs.ts';
import { drawElements } from './drawElements.ts';
import { call } from './page/call.ts';
import { sentence } from './page/sentence.ts';

/** The request stands behind this script in the page, so the page must be whole first. */
if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', start);
else start();

function start(): void {
  document.getElementById('print')?.addEventListener('click', () => window.print());
  showSheet().catch((error: unknown) => {
    say(sentence(error instanceof Error ? error.message : String(error)));
  });
}

async function showSheet(): Promise<void> {
  const answer = await call('runSheetDocumentFor', requestOf(document));
  if (answer.kind === 'refused') {
    say(answer.problems.map(({ text }) => sentence(text)).join(' '));
    return;
  }
  document
    .getElementById('sheet')
    ?.replaceChildren(drawElements(runSheetElements(answer.document)));
  document.getElementById('print')?.removeAttribute('disabled');
  say('');
}

/** Which run the dialog was opened for; the verb checks what it gets. */
function requestOf(page: Document): RunPayload {
  const text = page.getElementById('request')?.getAttribute('data-request') ?? '';
  return JSON.parse(decodeURIComponent(text)) as RunPayload; // checked by the verb
}

function say(words: string): void {
  const status = document.getElementById('status');
  if (status) status.textContent = words;
}
