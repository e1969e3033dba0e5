import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AnswerOf, CommandName } from '../../shared/commands/commandTypes.ts';
import type { CallResult, Host, UiRequest } from '../../workbench/host/Host.ts';
import { openHost } from '../../workbench/host/openHost.ts';

/** The built add-on in a workbook that holds the invented shop. */
export interface DemoBook {
  readonly host: Host;
  /** Calls a verb as a page in `window` does, while a cell is selected. */
  readonly call: (name: string, payload: unknown, from?: Place) => Promise<CallResult>;
  /** The same, for calls that must answer. */
  readonly ask: <V extends CommandName>(
    verb: V,
    payload: unknown,
    from?: Place,
  ) => Promise<AnswerOf<V>>;
  /** What the add-on asked the page to show, in order. */
  readonly shown: readonly UiRequest[];
}

interface Place {
  readonly window?: string;
  readonly sheet?: string;
  readonly range?: string;
}

/** A folder of its own with the built add-on; `remove` takes it away. */
export function copyAddOn(): { readonly dist: string; readonly remove: () => void } {
  const dist = mkdtempSync(join(tmpdir(), 'poursmith-verbs-'));
  cpSync('dist', dist, { recursive: true }); // built before all tests
  return { dist, remove: () => rmSync(dist, { recursive: true }) };
}

export async function openDemoBook(
  dist: string,
  timeZone = 'America/Denver',
  now = () => new Date('2026-12-01T20:00:00Z'),
  email = () => '',
): Promise<DemoBook> {
  const host = await openHost({ dist, timeZone, now, email });
  const shown: UiRequest[] = [];
  host.listen((event) => {
    if (event.kind !== 'ui') return;
    shown.push(event.request);
    if (event.request.kind === 'alert') host.answer(event.request.id, 'ok');
  });
  const call: DemoBook['call'] = (
    name,
    payload,
    { window = 'a', sheet = 'Orders', range = 'A2' } = {},
  ) =>
    host.call(name, payload === undefined ? [] : [payload], {
      window,
      selection: { sheet, range },
    });
  const filled = await call('fillDemoShop', undefined, { sheet: 'Sheet1', range: 'A1' });
  if (filled.kind === 'failure') throw new Error(filled.message);
  return {
    host,
    shown,
    call,
    ask: async <V extends CommandName>(verb: V, payload: unknown, from?: Place) => {
      const result = await call(verb, payload, from);
      if (result.kind === 'failure') throw new Error(result.message);
      return result.value as AnswerOf<V>; // the verb's own answer, as it left the add-on
    },
  };
}
