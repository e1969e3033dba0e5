import type { CallResult } from '../../host/Host.ts';
import type { FromFrame, ToFrame } from './frameMessageTypes.ts';
import { scriptRunner } from './scriptRunner.ts';

/*
 * Runs first in every page of the add-on: gives it `google.script`, as the platform does.
 * The frame has no origin of its own, so messages go to whoever is around it, which is this workbench.
 */
const waiting = new Map<number, (result: CallResult) => void>();
let last = 0;

function tell(message: FromFrame) {
  window.parent.postMessage(message, '*');
}

window.addEventListener('message', (event: MessageEvent<ToFrame>) => {
  if (event.source !== window.parent) return;
  waiting.get(event.data.id)?.(event.data.result);
  waiting.delete(event.data.id);
});

window.addEventListener('keydown', (event) => {
  if (event.key === 'Escape' && !event.defaultPrevented) tell({ kind: 'escape' });
});

const run = scriptRunner(
  (name, args) =>
    new Promise((resolve) => {
      last += 1;
      waiting.set(last, resolve);
      tell({ kind: 'run', id: last, name, args });
    }),
);

const host = {
  origin: document.referrer,
  close: () => tell({ kind: 'close' }),
  setWidth: (width: number) => tell({ kind: 'size', width }),
  setHeight: (height: number) => tell({ kind: 'size', height }),
  editor: { focus: () => tell({ kind: 'focus' }) },
};

Object.defineProperty(window, 'google', { value: { script: { run, host } } });
