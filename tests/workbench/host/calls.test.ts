import { describe, expect, test } from 'vitest';
import type { HostEvent } from '../../../workbench/host/Host.ts';
import { openFixture } from './fixture.ts';

const FROM = { window: 'w1', selection: { sheet: 'Sheet1', range: 'B2:C3' } };

function ui(events: readonly HostEvent[]) {
  return events.flatMap((event) => (event.kind === 'ui' ? [event.request] : []));
}

describe('a call', () => {
  test('writes, flushes and reads the calculated value', async () => {
    const { value, host } = await openFixture();
    const read = await value(
      'sheet.getRange("A1:A2").setValues([[20], ["=A1*2+1"]]); SpreadsheetApp.flush(); return sheet.getRange("A2").getValue()',
    );
    expect(read).toBe(41);
    expect(host.values('Sheet1', 'A1:A2')).toEqual([[20], [41]]);
  });

  test('starts with fresh globals', async () => {
    const { value } = await openFixture();
    await value('globalThis.left = 1; loads = 7');
    expect(await value('return [typeof left, loads]')).toEqual(['undefined', 1]);
  });

  test.each([
    { name: 'secret_', args: [], expected: 'secret_ is private and cannot be called' },
    { name: 'nothing', args: [], expected: 'Script function not found: nothing' },
    { name: 'evaluate;process', args: [], expected: 'Script function not found: evaluate;process' },
    {
      name: 'evaluate',
      args: [{ at: [new Date(0)] }],
      expected: 'the argument of evaluate.at.0 holds a Date, which may not pass',
    },
    {
      name: 'evaluate',
      args: ['throw new Error("E_LOCKED: busy")'],
      expected: 'E_LOCKED: busy',
    },
  ])('of $name fails with "$expected"', async ({ name, args, expected }) => {
    const { host } = await openFixture();
    expect(await host.call(name, args, FROM)).toEqual({ kind: 'failure', message: expected });
  });

  test('waits for the one before it', async () => {
    const { run } = await openFixture();
    const slow = run('Utilities.sleep(120); sheet.getRange("A1").setValue("slow"); return "slow"');
    const fast = run('return sheet.getRange("A1").getValue()');
    expect(await fast).toEqual({ kind: 'value', value: 'slow' });
    expect(await slow).toEqual({ kind: 'value', value: 'slow' });
  });

  test('knows the selection it came from', async () => {
    const { run } = await openFixture();
    const text =
      'return [ss.getActiveRange().getA1Notation(), ss.getCurrentCell().getA1Notation()]';
    expect(await run(text, FROM.selection)).toEqual({ kind: 'value', value: ['B2:C3', 'B2'] });
  });

  test('sees the clock it is given', async () => {
    const { value } = await openFixture({ now: () => new Date('2026-05-04T12:00:00Z') });
    const read = await value(
      'return [new Date().toISOString(), Date.now(), new Date(0).getTime(), new Date() instanceof Date]',
    );
    expect(read).toEqual(['2026-05-04T12:00:00.000Z', Date.UTC(2026, 4, 4, 12), 0, true]);
  });
});

describe('what a call shows', () => {
  test('a sidebar, a dialog and a toast reach the window that called', async () => {
    const { host, value } = await openFixture();
    const events: HostEvent[] = [];
    host.listen((event) => events.push(event));
    await value(
      'const page = () => HtmlService.createHtmlOutputFromFile("Page"); SpreadsheetApp.getUi().showSidebar(page().setTitle("Side")); SpreadsheetApp.getUi().showModalDialog(page().setWidth(500).setHeight(300), "Ask"); ss.toast("done", "Fixture");',
    );
    expect(ui(events)).toEqual([
      { kind: 'sidebar', title: 'Side', html: '<p>page</p>' },
      { kind: 'dialog', title: 'Ask', html: '<p>page</p>', width: 500, height: 300 },
      { kind: 'toast', title: 'Fixture', text: 'done' },
    ]);
    expect(events.every((event) => event.kind !== 'ui' || event.window === 'w1')).toBe(true);
  });

  test.each([
    { button: 'yes', expected: true },
    { button: 'close', expected: false },
  ])('an alert waits for its answer: $button', async ({ button, expected }) => {
    const { host, value } = await openFixture();
    host.listen((event) => {
      if (event.kind === 'ui' && event.request.kind === 'alert')
        host.answer(event.request.id, button);
    });
    const read = await value(
      'const u = SpreadsheetApp.getUi(); return u.alert("Title", "Sure?", u.ButtonSet.YES_NO) === u.Button.YES',
    );
    expect(read).toBe(expected);
  });

  test('menus come from onOpen, which may show nothing', async () => {
    const { host } = await openFixture();
    expect(host.menus()).toEqual([
      {
        title: 'Fixture',
        items: [
          { label: 'Say hello', run: 'hello' },
          { label: '' },
          { label: 'Evaluate', run: 'evaluate' },
        ],
      },
    ]);
  });

  test('the console of the add-on is heard', async () => {
    const { host, value } = await openFixture();
    const lines: string[] = [];
    host.listen((event) => event.kind === 'log' && lines.push(event.text));
    await value('console.log("seen", { a: 1 }); Logger.log("too")');
    expect(lines).toEqual(['seen {"a":1}', 'too']);
  });
});

describe('the document lock', () => {
  test('is busy while another person holds it', async () => {
    const { host, value } = await openFixture();
    const attempt = 'const l = LockService.getDocumentLock(); return [l.tryLock(30), l.hasLock()]';
    const release = host.holdLock();
    expect(await value(attempt)).toEqual([false, false]);
    release();
    expect(await value(attempt)).toEqual([true, true]);
  });

  test('waitLock fails in words when it waited in vain', async () => {
    const { host, failure } = await openFixture();
    host.holdLock();
    expect(await failure('LockService.getDocumentLock().waitLock(10)')).toBe(
      'Lock timeout: another process was holding the lock for too long.',
    );
  });

  test('ends with the run that took it', async () => {
    const { value } = await openFixture();
    await value('LockService.getDocumentLock().tryLock(0)');
    expect(await value('return LockService.getDocumentLock().tryLock(0)')).toBe(true);
  });

  test('does not survive an alert', async () => {
    const { host, value } = await openFixture();
    host.listen((event) => {
      if (event.kind === 'ui' && event.request.kind === 'alert')
        host.answer(event.request.id, 'ok');
    });
    const read = await value(
      'const l = LockService.getDocumentLock(); l.tryLock(0); SpreadsheetApp.getUi().alert("wait"); return l.hasLock()',
    );
    expect(read).toBe(false);
  });
});
