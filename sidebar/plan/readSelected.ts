import type { OutcomeLogged } from '../../shared/commands/logCommands.ts';
import { clockField } from '../page/clockField.ts';
import { type Draft, keepDraft, keptDraft } from '../panel/draft.ts';
import type { Store } from '../panel/store.ts';
import { work } from '../panel/work.ts';

/** Shows the plan of the row that is selected on the sheet. */
export async function readSelected(store: Store): Promise<void> {
  const answer = await work(store, 'Reading the row…', 'planSelectedOrder', {});
  if (answer === undefined) return;
  const { plan } = answer;
  const firstPour = plan.kind === 'plan' ? clockField(plan.firstPour) : '';
  const name = plan.order === '' ? 'Row' : `Order ${plan.order}`;
  const texts = [plan.kind === 'plan' ? `${name} read.` : `${name} read: it has no plan yet.`];
  store.set({
    view: 'plan',
    plan,
    firstPour,
    runId: '',
    sheetOf: undefined,
    notice: { kind: 'done', texts },
  });
}

/** Plans the order on show again, at another pour time or after a change of the book. */
export async function planAgain(store: Store, firstPour: string): Promise<void> {
  const { plan } = store.get();
  if (plan === undefined || plan.order === '') return;
  store.follow({ firstPour });
  const payload = { order: plan.order, firstPour };
  const answer = await work(store, 'Planning…', 'planSelectedOrder', payload);
  if (answer === undefined) return;
  const texts = [`Order ${plan.order} planned again.`];
  store.set({ view: 'plan', plan: answer.plan, notice: { kind: 'done', texts } });
}

export async function makeSheet(store: Store): Promise<void> {
  const { plan, firstPour } = store.get();
  if (plan === undefined) return;
  const payload = { order: plan.order, firstPour };
  const made = await work(store, 'Making the run sheet…', 'makeRunSheet', payload);
  if (made === undefined) return;
  const texts = [`Run sheet ${made.runId} is on the sheet Run sheet.`];
  store.set({ runId: made.runId, sheetOf: plan, notice: { kind: 'done', texts } });
}

/** Opens the pictures of the plan's heat. */
export async function seeHeat(store: Store): Promise<void> {
  const { plan, firstPour } = store.get();
  if (plan === undefined) return;
  const payload = { order: plan.order, firstPour };
  const shown = await work(store, 'Opening the pictures…', 'showHeat', payload);
  if (shown === undefined) return;
  const texts = [`The heat of order ${shown.order} is open.`];
  store.set({ notice: { kind: 'done', texts } });
}

export async function printSheet(store: Store): Promise<void> {
  const { plan, firstPour, runId } = store.get();
  if (plan === undefined || runId === '') return;
  const payload = { order: plan.order, runId, firstPour };
  const shown = await work(store, 'Opening the print page…', 'printRunSheet', payload);
  if (shown === undefined) return;
  const texts = [`The print page of ${shown.runId} is open.`];
  store.set({ notice: { kind: 'done', texts } });
}

/**
 * Opens the log form. An entry that was typed and is not known to be written comes back with its own token, so that
 * sending it again cannot log it twice.
 * @param kept - values that go on from the entry before
 */
export async function openLog(store: Store, kept: Draft['values'] = {}): Promise<void> {
  const { plan, runId } = store.get();
  if (plan === undefined) return;
  const form = await work(store, 'Opening the log form…', 'startLog', { order: plan.order });
  if (form === undefined) return;
  const run = kept['run'] ?? (runId !== '' ? runId : (form.runs[0]?.run ?? ''));
  const fresh = { order: form.order, token: form.token, values: { ...kept, run } };
  store.set({ view: 'log', form, draft: keptDraft(form.order) ?? fresh, notice: undefined });
}

/** Opens the form with what a row of the log holds, to be written as a new row that replaces it. */
export async function openCorrection(store: Store, entry: string): Promise<void> {
  const { plan } = store.get();
  if (plan === undefined) return;
  const payload = { order: plan.order, corrects: entry };
  const form = await work(store, 'Opening the entry…', 'startLog', payload);
  if (form?.correction === undefined) return;
  const { order, token, correction } = form;
  const kept = keptDraft(order, 'correction');
  const fresh = { order, token, corrects: entry, values: correction.values };
  const draft = kept?.corrects === entry ? kept : fresh;
  store.set({ view: 'log', form, draft, notice: undefined });
}

export async function sendLog(store: Store): Promise<void> {
  const { draft } = store.get();
  if (draft === undefined) return;
  const logged = await work(store, 'Writing to the log…', 'logOutcome', draft);
  if (logged === undefined) return;
  keepDraft(undefined, kindOf(draft));
  store.set({ view: 'logged', logged, notice: { kind: 'done', texts: [whereText(logged)] } });
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

/** Another round of the same run by the same person. */
export async function logAnother(store: Store): Promise<void> {
  const { run = '', who = '' } = store.get().draft?.values ?? {};
  await openLog(store, { run, who });
}

/** Follows typing; nothing is drawn. */
export function typeInto(store: Store, key: string, value: string): void {
  const { draft } = store.get();
  if (draft === undefined) return;
  const changed = { ...draft, values: { ...draft.values, [key]: value } };
  keepDraft(changed, kindOf(draft));
  store.follow({ draft: changed });
}

export function showPlan(store: Store): void {
  store.set({ view: 'plan', notice: undefined, problems: [] });
}
