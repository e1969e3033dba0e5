import { readFileSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { FRAMES, type FramePages } from './framePages.ts';
import { type Gate, hasToken, isOurHost, requestUrl } from './isOurHost.ts';

const ALWAYS = { 'X-Content-Type-Options': 'nosniff', 'Referrer-Policy': 'no-referrer' };

const PAGE_POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; " +
  "font-src 'self' data:; connect-src 'self'; frame-src 'self'; frame-ancestors 'none'; base-uri 'none'";

/** The add-on's pages hold all they need inline, and get no origin and no network. */
const FRAME_POLICY =
  "sandbox allow-scripts allow-forms allow-modals allow-downloads allow-popups allow-popups-to-escape-sandbox; default-src 'none'; " +
  "script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; frame-ancestors 'self'";

/** Its address carries a hash of the content, so that a browser need not ask again. */
const FOREVER = 'public, max-age=31536000, immutable';

const FILES = new Map([
  ['/main.js', 'text/javascript; charset=utf-8'],
  ['/page.css', 'text/css; charset=utf-8'],
]);

/** Answers the plain requests: page, script, style, frames. */
export function answerRequest(
  gate: Gate,
  folder: string,
  frames: FramePages,
): (request: IncomingMessage, response: ServerResponse) => void {
  const page = readFileSync(`${folder}/index.html`);
  const files = new Map([...FILES.keys()].map((path) => [path, readFileSync(folder + path)]));
  return (request, response) => {
    const send = (status: number, headers: Record<string, string>, body: string | Buffer) =>
      void response.writeHead(status, { ...ALWAYS, ...headers }).end(body);
    const refuse = (status: number, because: string) =>
      send(status, { 'Content-Type': 'text/plain; charset=utf-8' }, `${because}\n`);
    if (!isOurHost(request.headers.host, gate))
      return refuse(403, 'This server does not answer to that name.');
    if (request.method !== 'GET') return refuse(405, 'Only GET is answered.');
    const { pathname } = requestUrl(request);
    const file = files.get(pathname);
    if (file) {
      return send(
        200,
        { 'Content-Type': FILES.get(pathname) ?? '', 'Cache-Control': FOREVER },
        file,
      );
    }
    const html = { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'no-store' };
    if (pathname.startsWith(FRAMES)) {
      const found = frames.find(pathname);
      if (found === undefined) return refuse(404, 'This page of the add-on is gone.');
      return send(200, { ...html, 'Content-Security-Policy': FRAME_POLICY }, found);
    }
    if (pathname !== '/') return refuse(404, 'There is nothing here.');
    if (!hasToken(request, gate))
      return refuse(403, 'Open the address that the start command printed, token included.');
    return send(200, { ...html, 'Content-Security-Policy': PAGE_POLICY }, page);
  };
}
