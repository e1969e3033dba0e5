import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { WebSocket } from 'ws';
import type { Host } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';
import { freshPage, PAGE } from '../../../workbench/server/freshBuilds.ts';
import type { ToWindow } from '../../../workbench/server/messageTypes.ts';
import { type RunningServer, startServer } from '../../../workbench/server/startServer.ts';

let host: Host;
let server: RunningServer;

beforeAll(async () => {
  await freshPage(() => {});
  host = await openHost({ dist: 'tests/browser/fixture', timeZone: 'Etc/UTC' });
  const book = { name: 'Test book', keeps: 'memory' } as const;
  server = await startServer({ host, page: PAGE, book, address: '127.0.0.1', port: 0 });
}, 120_000);

afterAll(async () => {
  await server.close();
  await host.close();
});

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

function get(path: string, headers: Readonly<Record<string, string>> = {}): Promise<Answer> {
  const { hostname, port } = new URL(server.url);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path, headers }, (response) => {
      let body = '';
      response.on('data', (part) => {
        body += String(part);
      });
      response.on('end', () =>
        resolve({ status: response.statusCode, headers: response.headers, body }),
      );
    })
      .on('error', reject)
      .end();
  });
}

/** What becomes of a web socket: open, or the status it was refused with. */
function socket(path: string, headers: Readonly<Record<string, string>> = {}): Promise<string> {
  const url = new URL(path, server.url);
  url.protocol = 'ws:';
  return new Promise((resolve) => {
    const made = new WebSocket(url, { headers });
    made.on('open', () => {
      made.terminate();
      resolve('open');
    });
    made.on('unexpected-response', (_request, response) => {
      resolve(String(response.statusCode));
      made.terminate();
    });
    made.on('error', () => {});
  });
}

const search = () => new URL(server.url).search;

describe('the server', () => {
  test('gives the page to who has the token, without letting others store or frame it', async () => {
    const page = await get(`/${search()}`);
    expect(page.status).toBe(200);
    expect(page.body).toContain('<title>Poursmith workbench</title>');
    expect(page.headers['cache-control']).toBe('no-store');
    expect(page.headers['content-security-policy']).toContain("frame-ancestors 'none'");
  });

  test('gives the script with leave to keep it', async () => {
    const path = /src="(\/main\.js\?\w+)"/.exec((await get(`/${search()}`)).body)?.[1] ?? '';
    const script = await get(path);
    expect(script.status).toBe(200);
    expect(script.headers['cache-control']).toBe('public, max-age=31536000, immutable');
  });

  test('refuses the page without the token, in a sentence', async () => {
    const sentence = 'Open the address that the start command printed, token included.\n';
    expect(await get('/')).toMatchObject({ status: 403, body: sentence });
    expect(await get('/?token=wrong')).toMatchObject({ status: 403, body: sentence });
  });

  test('refuses a request under another name, token or not', async () => {
    for (const path of ['/', `/${search()}`, '/main.js', '/page.css']) {
      expect((await get(path, { Host: 'evil.example' })).status).toBe(403);
    }
  });

  test('serves nothing but its own files', async () => {
    for (const path of ['/../package.json', '/package.json', '/%2e%2e/package.json', '/frame/0']) {
      expect((await get(path)).status).toBe(404);
    }
  });

  test('opens the web socket for its own page only', async () => {
    const path = `/socket${search()}`;
    const { origin } = new URL(server.url);
    expect(await socket(path)).toBe('open');
    expect(await socket(path, { Origin: origin })).toBe('open');
    expect(await socket(path, { Origin: 'http://evil.example' })).toBe('403');
    expect(await socket(path, { Host: 'evil.example' })).toBe('403');
    expect(await socket('/socket')).toBe('403');
    expect(await socket('/socket?token=wrong')).toBe('403');
  });

  test('closes a socket that talks nonsense, and goes on', async () => {
    const url = new URL(`/socket${search()}`, server.url);
    url.protocol = 'ws:';
    for (const nonsense of [
      '{',
      '{"kind":"look","sheet":"Sheet1","cell":"no cell"}',
      '{"kind":"answer","id":1,"button":"maybe"}',
    ]) {
      const code = await new Promise((resolve) => {
        const made = new WebSocket(url);
        made.on('open', () => made.send(nonsense));
        made.on('close', resolve);
      });
      expect(code).toBe(1008);
    }
    expect(await socket(`/socket${search()}`)).toBe('open');
  });

  test('an add-on page gets its script first, no origin, no network, and goes with its window', async () => {
    const url = new URL(`/socket${search()}`, server.url);
    url.protocol = 'ws:';
    const made = new WebSocket(url);
    const selection = { sheet: 'Sheet1', range: 'A1' };
    const source = await new Promise<string>((resolve) => {
      made.on('open', () =>
        made.send(
          JSON.stringify({ kind: 'call', call: 1, name: 'openSidebar', args: [], selection }),
        ),
      );
      made.on('message', (data) => {
        // The server's own messages.
        const message = JSON.parse(String(data)) as ToWindow;
        if (message.kind === 'show' && message.request.kind === 'sidebar')
          resolve(message.request.source);
      });
    });
    const frame = await get(source);
    expect(frame.status).toBe(200);
    expect(frame.body).toMatch(/^<!DOCTYPE html><meta charset="utf-8"><script>/);
    expect(frame.body).toContain('Describe the selection');
    const policy = String(frame.headers['content-security-policy']);
    expect(policy).toContain('sandbox allow-scripts');
    expect(policy).not.toContain('allow-same-origin');
    expect(policy).toContain("default-src 'none'");
    await new Promise((resolve) => {
      made.on('close', resolve);
      made.close();
    });
    await expect.poll(async () => (await get(source)).status).toBe(404);
  });
});
