import type { WebSocket } from 'ws';
import type { Host, HostEvent, UiRequest } from '../host/Host.ts';
import type { FramePages } from './framePages.ts';
import type { FromWindow, ShownRequest, ToWindow } from './messageTypes.ts';
import { readWindowMessage } from './readWindowMessage.ts';

export interface Windows {
  open(socket: WebSocket): void;
  close(): void;
}

interface BookName {
  readonly name: string;
  readonly keeps: 'file' | 'memory';
}

/** The open windows of one workbook: each gets a snapshot, then every change in order. */
export function windows(host: Host, frames: FramePages, book: BookName): Windows {
  const sockets = new Map<string, WebSocket>();
  const asked = new Map<number, string>();
  let last = 0;

  const tell = (name: string, message: ToWindow) =>
    sockets.get(name)?.send(JSON.stringify(message));
  const tellAll = (message: ToWindow) => {
    // Written once and at once: the engine goes on using what events carry.
    const text = JSON.stringify(message);
    for (const socket of sockets.values()) socket.send(text);
  };

  function show(window: string, request: UiRequest) {
    if (request.kind === 'alert') {
      if (!sockets.has(window)) {
        host.answer(request.id, 'close');
        return;
      }
      asked.set(request.id, window);
    }
    tell(window, { kind: 'show', request: shown(request, (html) => frames.add(window, html)) });
  }

  const stopListening = host.listen((event: HostEvent) => {
    if (event.kind === 'ui') show(event.window, event.request);
    else if (event.kind === 'saved') tellAll({ kind: 'saved' });
    else tellAll(event);
  });

  function take(window: string, message: FromWindow) {
    switch (message.kind) {
      case 'change':
        tell(window, applyAll(host, window, message));
        return;
      case 'call': {
        const { call, name, args, selection } = message;
        void host
          .call(name, args, { window, selection })
          .then((result) => tell(window, { kind: 'result', call, result }));
        return;
      }
      case 'answer':
        asked.delete(message.id);
        host.answer(message.id, message.button);
        return;
      default: {
        const { sheet, cell } = message;
        const found = host.sheets().includes(sheet) ? host.cellMessage(sheet, cell) : undefined;
        tell(window, { kind: 'cell', sheet, cell, ...(found !== undefined && { message: found }) });
      }
    }
  }

  function leave(window: string) {
    sockets.delete(window);
    frames.forget(window);
    for (const [id, asker] of asked) {
      if (asker !== window) continue;
      asked.delete(id);
      host.answer(id, 'close');
    }
  }

  return {
    open: (socket) => {
      last += 1;
      const window = `window-${last}`;
      const taken = (message: FromWindow) => {
        try {
          take(window, message);
          return true;
        } catch {
          // Names a sheet, cell or button that does not exist: no page of ours does.
          return false;
        }
      };
      socket.on('message', (data) => {
        const message = readWindowMessage(String(data));
        if (!message || !taken(message)) socket.close(1008, 'not a message of the workbench page');
      });
      socket.on('close', () => leave(window));
      // Nothing may come between the snapshot and the first operation, so both happen in one turn.
      sockets.set(window, socket);
      const { name, keeps } = book;
      tell(window, {
        kind: 'start',
        window,
        book: name,
        keeps,
        menus: host.menus(),
        snapshot: host.snapshot(),
      });
    },
    close: () => {
      stopListening();
      for (const socket of sockets.values()) socket.terminate();
    },
  };
}

/** Applies the mutations of one command; those after the first were made on top of it. */
function applyAll(
  host: Host,
  origin: string,
  change: Extract<FromWindow, { readonly kind: 'change' }>,
): ToWindow {
  const { batch } = change;
  let { madeAt } = change;
  for (const { id, params } of change.mutations) {
    const done = host.apply({ madeAt, id, params, origin });
    if (done.kind !== 'applied') return { kind: 'refused', batch, because: done.because };
    madeAt = done.sequence;
  }
  return { kind: 'applied', batch, sequence: madeAt };
}

function shown(request: UiRequest, store: (html: string) => string): ShownRequest {
  if (request.kind !== 'sidebar' && request.kind !== 'dialog') return request;
  const { html, ...rest } = request;
  return { ...rest, source: store(html) };
}
