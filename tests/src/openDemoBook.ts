import type { AnswerOf, CommandName } from '../../shared/commands/commandTypes.ts';
import type { CallResult, Host, HostOptions, UiRequest } from '../../workbench/host/Host.ts';
import { openHost } from '../../workbench/host/openHost.ts';
import { filledBook } from '../filledBook.ts';

/** The built add-on in a workbook that holds the invented shop. */
export interface DemoBook {
  readonly host: Host;
  /** Calls a command as a page in `window` does, while a cell is selected. */
  readonly call: (name: string, payload: unknown, from?: Place) => Promise<CallResult>;
  /** The same, for calls that must answer. */
  readonly ask: <Name extends CommandName>(
    name: Name,
    payload: unknown,
    from?: Place,
  ) => Promise<AnswerOf<Name>>;
  /** What the add-on asked the page to show, in order. */
  readonly shown: readonly UiRequest[];
}

interface Place {
  readonly window?: string;
  readonly sheet?: string;
  readonly range?: string;
}

/** A copy of the filled demo book, in Denver on 2026-12-01 where nothing else is said. */
export async function openDemoBook(
  options: Omit<HostOptions, 'dist' | 'book' | 'copyOf'> = {},
): Promise<DemoBook> {
  const { timeZone = 'America/Denver', now = () => new Date('2026-12-01T20:00:00Z') } = options;
  const host = await openHost({
    ...options,
    dist: 'dist',
    timeZone,
    now,
    copyOf: await filledBook(),
  });
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
  return {
    host,
    shown,
    call,
    ask: async <Name extends CommandName>(name: Name, payload: unknown, from?: Place) => {
      const result = await call(name, payload, from);
      if (result.kind === 'failure') throw new Error(result.message);
      return result.value as AnswerOf<Name>; // the command's own answer, as it left the add-on
    },
  };
}
