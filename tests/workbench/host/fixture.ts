import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import type { CallResult, Host, HostOptions, Selection } from '../../../workbench/host/Host.ts';
import { openHost } from '../../../workbench/host/openHost.ts';

/** A small add-on that does what a test asks: `evaluate` runs any text in the add-on's own scope. */
const CODE = `
var loads = (typeof loads === 'number' ? loads : 0) + 1;

/** Doubles numbers, leaves blanks.
 * @param {number|number[][]} input Value or range.
 * @return {number|number[][]} Doubled.
 * @customfunction */
function DOUBLE(input) {
  if (input === 'bad') throw new Error('input must be a number, got "bad"');
  const one = (value) => (value === '' ? '' : typeof value === 'number' ? 2 * value : '?');
  return Array.isArray(input) ? input.map((row) => row.map(one)) : one(input);
}

/** What an argument looks like inside.
 * @customfunction */
function LOOKS(input) {
  if (Array.isArray(input)) return 'rows ' + JSON.stringify(input);
  if (input instanceof Date) return 'date ' + input.toISOString();
  return typeof input + ' ' + String(input);
}

/** Tries to write.
 * @customfunction */
function WRITES() {
  SpreadsheetApp.getActive().getSheets()[0].getRange('Z1').setValue(1);
  return 'written';
}

/** Reads the workbook.
 * @customfunction */
function READS() {
  return SpreadsheetApp.getActive().getSheets()[0].getName();
}

/* not a doc comment: @customfunction */
function plain() {}

function onOpen(event) {
  SpreadsheetApp.getUi().createMenu('Fixture').addItem('Say hello', 'hello').addSeparator().addItem('Evaluate', 'evaluate').addToUi();
  if (event.authMode !== ScriptApp.AuthMode.LIMITED) throw new Error('not limited');
}

function hello() {
  SpreadsheetApp.getActive().toast('hello', 'Fixture');
}

function evaluate(text) {
  const ss = SpreadsheetApp.getActive();
  const sheet = ss.getActiveSheet();
  return new Function('ss', 'sheet', text)(ss, sheet);
}

function secret_() {
  return 1;
}
`;

const cleanups: (() => void | Promise<void>)[] = [];

afterEach(async () => {
  for (const cleanup of cleanups.splice(0).reverse()) await cleanup();
});

/** A folder that is gone after the test. */
export function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'host-test-'));
  cleanups.push(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

/** @param more - code after the fixture's own; later declarations replace earlier ones */
export function writeFixture(more = ''): string {
  const dist = folder();
  writeFileSync(join(dist, 'Code.js'), CODE + more);
  writeFileSync(join(dist, 'appsscript.json'), '{ "timeZone": "Etc/UTC", "runtimeVersion": "V8" }');
  writeFileSync(join(dist, 'Page.html'), '<p>page</p>');
  return dist;
}

export interface Opened {
  readonly host: Host;
  /** Runs text inside the add-on: `ss` and `sheet` are the active ones. */
  readonly run: (text: string, selection?: Selection) => Promise<CallResult>;
  /** The same, for its value; fails the test when the add-on failed. */
  readonly value: (text: string) => Promise<unknown>;
  /** The same, for the sentence it failed with. */
  readonly failure: (text: string) => Promise<string>;
}

const FIRST: Selection = { sheet: 'Sheet1', range: 'A1' };

/** A host with the fixture add-on, closed after the test. */
export async function openFixture(options: Partial<HostOptions> = {}): Promise<Opened> {
  const host = await openHost({ dist: writeFixture(), timeZone: 'America/New_York', ...options });
  cleanups.push(() => host.close());
  const run = (text: string, selection = FIRST) =>
    host.call('evaluate', [text], { window: 'w1', selection });
  return {
    host,
    run,
    value: async (text) => {
      const result = await run(text);
      if (result.kind === 'failure') throw new Error(result.message);
      return result.value;
    },
    failure: async (text) => {
      const result = await run(text);
      if (result.kind === 'value')
        throw new Error(`no failure but ${JSON.stringify(result.value)}`);
      return result.message;
    },
  };
}
