import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  drawn,
  FIXTURE,
  type OpenWorkbench,
  openWorkbench,
  PATIENCE,
  settled,
  shown,
  type,
} from './openWorkbench.ts';

describe('two windows', { timeout: PATIENCE }, () => {
  let bench: OpenWorkbench;
  let left: Page;
  let right: Page;

  beforeAll(async () => {
    bench = await openWorkbench({ dist: FIXTURE }, async (host) => {
      await host.call('fillBook', [], {
        window: 'test',
        selection: { sheet: 'Sheet1', range: 'A1' },
      });
    });
    left = await bench.window();
    right = await bench.window();
  }, PATIENCE);
  afterAll(() => bench.close());

  test('a change in one shows in the other, computed cells too', async () => {
    await type(left, 'Sheet1', 'A2', '11');
    await expect.poll(() => shown(right, 'Sheet1', 'B2')).toBe('22');
    await type(right, 'Sheet1', 'A4', '8');
    await expect.poll(() => shown(left, 'Sheet1', 'B4')).toBe('16');
  });

  test('edits of the same cell at the same time end equal everywhere', async () => {
    for (const [one, two] of [
      ['1', '2'],
      ['3', '4'],
      ['5', '6'],
    ] as const) {
      await Promise.all([type(left, 'Sheet1', 'A3', one), type(right, 'Sheet1', 'A3', two)]);
      await Promise.all([settled(left), settled(right)]);
      const kept = String(bench.host.values('Sheet1', 'A3')[0]?.[0]);
      expect([one, two]).toContain(kept);
      await expect.poll(() => shown(left, 'Sheet1', 'A3')).toBe(kept);
      await expect.poll(() => shown(right, 'Sheet1', 'A3')).toBe(kept);
    }
  });

  test('a window whose change came too late starts again and says so', async () => {
    // The window hears nothing for a while, as on a slow line, and edits what it still shows.
    const slow = await bench.context.newPage();
    let hold = false;
    const held: (() => void)[] = [];
    await slow.routeWebSocket(/\/socket/, (socket) => {
      const server = socket.connectToServer();
      server.onMessage((message) => {
        if (hold) held.push(() => socket.send(message));
        else socket.send(message);
      });
    });
    await slow.goto(bench.url);
    await drawn(slow);
    hold = true;
    await bench.host.call('insertFirstRow', [], {
      window: 'test',
      selection: { sheet: 'Sheet1', range: 'A1' },
    });
    await type(slow, 'Sheet1', 'C4', 'late');
    hold = false;
    for (const release of held) release();
    await slow
      .getByText(
        'Your last change was not kept: rows, columns or sheets moved since the change was made.',
      )
      .waitFor();
    await drawn(slow);
    expect(await shown(slow, 'Sheet1', 'A2')).toBe('Pieces');
    expect(bench.host.values('Sheet1', 'C4:C5')).toEqual([[''], ['']]);
    await expect.poll(() => shown(left, 'Sheet1', 'A2')).toBe('Pieces');
  });

  test('a window that loses its server says so, takes no edits, and comes back with it', async () => {
    const cut = await bench.context.newPage();
    const lines: { close(): Promise<void> }[] = [];
    await cut.routeWebSocket(/\/socket/, (socket) => {
      socket.connectToServer();
      lines.push(socket);
    });
    await cut.goto(bench.url);
    await drawn(cut);
    await lines[0]?.close();
    const lost = 'Connection lost: changes are not kept. Trying again…';
    await expect.poll(() => cut.textContent('#state')).toBe(lost);
    expect(await cut.locator('#work').evaluate((work: HTMLElement) => work.inert)).toBe(true);
    await cut.getByText('The connection was lost for a while.').waitFor();
    await drawn(cut);
    await expect.poll(() => cut.textContent('#state')).toBe('Kept in memory only');
  });
});
