import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Host, UiRequest } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';

const FILE = 'dist-one-file/Poursmith.js';
const folder = mkdtempSync(join(tmpdir(), 'poursmith-one-file-'));
const shown: UiRequest[] = [];
let host: Host;

/** A script project that holds the pasted file and the manifest, and not one page. */
beforeAll(async () => {
  copyFileSync(FILE, join(folder, 'Code.js'));
  copyFileSync('dist/appsscript.json', join(folder, 'appsscript.json'));
  host = await openHost({ dist: folder, timeZone: 'America/Denver' });
  host.listen((event) => {
    if (event.kind !== 'ui') return;
    shown.push(event.request);
    if (event.request.kind === 'alert') host.answer(event.request.id, 'ok');
  });
}, 120_000);

afterAll(async () => {
  await host.close();
  rmSync(folder, { recursive: true });
});

async function ask(name: string, payload?: object): Promise<Readonly<Record<string, unknown>>> {
  const selection = { sheet: name === 'fillDemoShop' ? 'Sheet1' : 'Orders', range: 'A2' };
  const result = await host.call(name, payload === undefined ? [] : [payload], {
    window: 'a',
    selection,
  });
  if (result.kind === 'failure') throw new Error(result.message);
  return Object(result.value) as Readonly<Record<string, unknown>>; // any value makes an object
}

describe('the one file to paste', () => {
  test('has no line that the editor of the platform chokes on', () => {
    const lines = readFileSync(FILE, 'utf8').split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(500);
  });

  test('sets up, fills, plans, makes and prints a sheet, and logs, without a page beside it', async () => {
    await ask('fillDemoShop');
    await host.settled();
    expect(host.values('Orders', 'A2:A3').flat()).toEqual(['1001', '1002']);
    await ask('openSidebar');
    expect(shown.at(-1)).toMatchObject({
      kind: 'sidebar',
      html: readFileSync('dist/Sidebar.html', 'utf8'),
    });
    const { plan } = await ask('planSelectedOrder', { order: '1006' });
    expect(plan).toMatchObject({ kind: 'plan', order: '1006' });
    const { runId } = await ask('makeRunSheet', { order: '1006' });
    expect(runId).toBe('1006-2');
    await ask('printRunSheet', { order: '1006', runId });
    const dialog = shown.at(-1);
    expect(dialog).toMatchObject({ kind: 'dialog', title: 'Run sheet 1006-2' });
    expect(dialog && 'html' in dialog && dialog.html).toMatch(
      /<div id="request" hidden data-request="[^"<>]+" data-answer="[^"<>]+"><\/div><\/body>\s*<\/html>\s*$/,
    );
    const { token } = await ask('startLog', { order: '1006' });
    const values = {
      poured: '16',
      good: '15',
      who: 'AK',
      tearTest: 'tears through',
      run: '1006-2',
    };
    const logged = await ask('logOutcome', { order: '1006', token, values });
    expect(logged).toMatchObject({ kind: 'ok', logged: 'now' });
  }, 120_000);
});
