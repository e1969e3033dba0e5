import { randomBytes } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { WebSocketServer } from 'ws';
import type { Host } from '../host/Host.ts';
import { answerRequest } from './answerRequest.ts';
import { framePages } from './framePages.ts';
import { type Gate, hasToken, isOurHost, isOurOrigin, requestUrl } from './isOurHost.ts';
import { windows } from './windows.ts';

export interface ServerOptions {
  readonly host: Host;
  /** Folder of the built page. */
  readonly page: string;
  readonly book: { readonly name: string; readonly keeps: 'file' | 'memory' };
  /** Loopback unless the person asks for more. */
  readonly address: string;
  /** 0 takes any free port. */
  readonly port: number;
}

export interface RunningServer {
  /** Address of the page, with the token. */
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Serves the page and its web socket.
 *
 * @throws Error when the port is taken
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { host, page, book, address } = options;
  const frames = framePages(await readFile(`${page}/frame.js`, 'utf8'));
  const open = windows(host, frames, book);
  const server = createServer();
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port, address, resolve);
  });
  const bound = server.address();
  const port = typeof bound === 'object' && bound ? bound.port : options.port;
  const gate: Gate = { address, port, token: randomBytes(16).toString('hex') };
  server.on('request', answerRequest(gate, page, frames));

  const sockets = new WebSocketServer({ noServer: true, maxPayload: 64 * 1024 * 1024 });
  server.on('upgrade', (request, socket, head) => {
    const allowed =
      isOurHost(request.headers.host, gate) &&
      isOurOrigin(request) &&
      hasToken(request, gate) &&
      requestUrl(request).pathname === '/socket';
    if (!allowed) {
      socket.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n');
      return;
    }
    sockets.handleUpgrade(request, socket, head, (window) => open.open(window));
  });

  const name = address.includes(':') ? `[${address}]` : address;
  return {
    url: `http://${name}:${port}/?token=${gate.token}`,
    close: async () => {
      open.close();
      sockets.close();
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
    },
  };
}
