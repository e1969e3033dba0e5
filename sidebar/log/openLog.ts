import type { OutcomeLogged } from '../../shared/commands/logCommands.ts';
import { type Draft, keepDraft, keptDraft } from '../panel/draft.ts';
import { type Store, shown } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/**
 * Opens the log form. An entry that was typed and is not known to be written comes back with its own token, so that
 * sending it again cannot log it twice.
 * @param next - values that go on from the entry before
 */
export async function openLog(store: Store, next: Draft['values'] = {}): Promise<void> {
  const { onShow } = store.get();
  if (onShow === undefined) return;
  const payload = { order: onShow.plan.order };
  const form = await work(store, 'Opening the log form…', 'startLog', payload);
  if (form === undefined) return;
  const run = next['run'] ?? onShow.sheet?.runId ?? form.runs[0]?.run ?? '';
  const fresh = { order: form.order, token: form.token, values: { ...next, run } };
  const draft = keptDraft(form.order) ?? fresh;
  store.set({ view: { kind: 'log', form, draft, problems: [] }, notice: undefined });
}

/** Opens the form with what a row of the log holds, to be written as a new row that replaces it. */
export async function openCorrection(store: Store, entry: string): Promise<void> {
  const { onShow } = store.get();
  if (onShow === undefined) return;
  const payload = { order: onShow.plan.order, corrects: entry };
  const form = await work(store, 'Opening the entry…', 'startLog', payload);
  if (form?.correction === undefined) return;
  const { order, token, correction } = form;
  const kept = keptDraft(order, 'correction');
  const fresh = { order, token, corrects: entry, values: correction.values };
  const draft = kept?.corrects === entry ? kept : fresh;
  store.set({ view: { kind: 'log', form, draft, problems: [] }, notice: undefined });
}

export async function sendLog(store: Store): Promise<void> {
  const log = shown(store, 'log');
  if (log === undefined) return;
  const { draft } = log;
  const logged = await work(store, 'Writing to the log…', 'logOutcome', draft);
  if (logged === undefined) return;
  keepDraft(undefined, kindOf(draft));
  // Another round goes on with the same run and the same person.
  const { run = '', who = '' } = draft.values;
  const notice = done(whereText(logged));
  store.set({ view: { kind: 'logged', logged, next: { run, who } }, notice });
}

function kindOf({ corrects }: Draft): 'log' | 'correction' {
  return corrects === undefined ? 'log' : 'correction';
}

function whereText({ logged, row, run, replaces }: OutcomeLogged): string {
  if (replaces !== undefined)
    return `Row ${row} of Pour log replaces row ${replaces}, which stays and counts nowhere.`;
  if (logged === 'now') return `Run ${run} is written to row ${row} of Pour log.`;
  return `This entry of run ${run} was in row ${row} of Pour log already, so nothing was written. What you changed since it was first sent is not in it.`;
}

/** Follows typing; nothing is drawn. */
export function typeInto(store: Store, key: string, value: string): void {
  const log = shown(store, 'log');
  if (log === undefined) return;
  const draft = { ...log.draft, values: { ...log.draft.values, [key]: value } };
  keepDraft(draft, kindOf(draft));
  store.follow({ view: { ...log, draft } });
}
