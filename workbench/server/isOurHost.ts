import type { IncomingMessage } from 'node:http';
import { isIP } from 'node:net';

/** Where the server listens and the token its windows carry. */
export interface Gate {
  readonly address: string;
  readonly port: number;
  readonly token: string;
}

const LOOPBACK: readonly string[] = ['127.0.0.1', 'localhost', '[::1]'];

/**
 * Whether a request names this server as its host.
 *
 * A page elsewhere can point a name of its own at this machine and read what answers (DNS rebinding); it cannot change the
 * Host header its visitors send. Beyond loopback any plain IP address is taken, because nobody can point one elsewhere.
 */
export function isOurHost(host: string | undefined, gate: Gate): boolean {
  if (host === undefined) return false;
  const match = /^(\[[0-9a-f:]+\]|[^:]+):(\d+)$/i.exec(host);
  const [, name, port] = match ?? [];
  if (name === undefined || Number(port) !== gate.port) return false;
  if (LOOPBACK.includes(name)) return true;
  return !isLoopback(gate.address) && isIP(name.replace(/^\[|\]$/g, '')) !== 0;
}

export function isLoopback(address: string): boolean {
  return address === 'localhost' || address === '::1' || /^127(\.\d{1,3}){3}$/.test(address);
}

/** Whether the address of a request carries the token. */
export function hasToken(request: IncomingMessage, gate: Gate): boolean {
  return requestUrl(request).searchParams.get('token') === gate.token;
}

/** Whether a web socket was opened by a page of this server; programs other than browsers send no origin. */
export function isOurOrigin(request: IncomingMessage): boolean {
  const { origin, host } = request.headers;
  return origin === undefined || origin === `http://${host}`;
}

export function requestUrl(request: IncomingMessage): URL {
  return new URL(request.url ?? '/', 'http://workbench');
}
