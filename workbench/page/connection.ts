import type { FromWindow, ToWindow } from '../server/messageTypes.ts';

export interface Connection {
  send(message: FromWindow): void;
}

/** Opens the web socket of this page's server, with the token of this page's address. */
export function openConnection(listeners: {
  readonly message: (message: ToWindow) => void;
  readonly lost: () => void;
}): Connection {
  const address = new URL('/socket', location.href);
  address.protocol = location.protocol === 'https:' ? 'wss:' : 'ws:';
  address.search = location.search;
  const socket = new WebSocket(address);
  socket.addEventListener('message', (event: MessageEvent<string>) => {
    // The server is ours and of the same version.
    listeners.message(JSON.parse(event.data) as ToWindow);
  });
  socket.addEventListener('close', () => listeners.lost());
  return {
    send: (message) => {
      if (socket.readyState === WebSocket.OPEN) socket.send(JSON.stringify(message));
    },
  };
}
