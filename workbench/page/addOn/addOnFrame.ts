import type { CallResult } from '../../host/Host.ts';
import { htmlElement } from '../htmlElement.ts';
import type { FromFrame, ToFrame } from './frameMessageTypes.ts';

/** What a page of the add-on may ask of the window around it. */
export interface FrameListeners {
  readonly run: (name: string, args: readonly unknown[]) => Promise<CallResult>;
  readonly close: () => void;
  readonly escape: () => void;
  readonly focus: () => void;
  readonly size: (width: number | undefined, height: number | undefined) => void;
}

/** The keywords the platform gives its frames, but no origin: this one would be the workbench's own. */
const SANDBOX =
  'allow-scripts allow-forms allow-modals allow-downloads allow-popups allow-popups-to-escape-sandbox';

/**
 * A frame that holds a page of the add-on and carries its calls.
 *
 * @returns the frame, and a function that stops listening to it
 */
export function addOnFrame(
  source: string,
  title: string,
  listeners: FrameListeners,
): { readonly frame: HTMLIFrameElement; readonly forget: () => void } {
  const frame = htmlElement('iframe', { src: source, title, sandbox: SANDBOX });
  const listen = (event: MessageEvent<FromFrame>) => {
    if (event.source !== frame.contentWindow) return;
    take(event.data, listeners, (message) => frame.contentWindow?.postMessage(message, '*'));
  };
  window.addEventListener('message', listen);
  return { frame, forget: () => window.removeEventListener('message', listen) };
}

function take(
  message: FromFrame,
  listeners: FrameListeners,
  reply: (message: ToFrame) => void,
): void {
  switch (message.kind) {
    case 'run':
      void listeners
        .run(message.name, message.args)
        .then((result) => reply({ kind: 'result', id: message.id, result }));
      return;
    case 'size':
      listeners.size(message.width, message.height);
      return;
    default:
      listeners[message.kind]();
  }
}
