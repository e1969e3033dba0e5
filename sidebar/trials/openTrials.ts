import type { FigureChanged } from '../../shared/commands/commandTypes.ts';
import type { Proposal } from '../../shared/trials/proposal.ts';
import { proposalTitle } from '../../shared/trials/proposalTitle.ts';
import type { Store } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Shows every figure that the book's trials give. */
export async function openTrials(store: Store): Promise<void> {
  const answer = await work(store, 'Reading the trials…', 'readTrials', {});
  if (answer === undefined) return;
  const { proposals } = answer;
  const text = proposals.length === 0 ? 'Trials read: there are none yet.' : 'Trials read.';
  store.set({ view: { kind: 'trials', trials: answer }, notice: done(text) });
}

/** Puts what the trials give into the book. */
export async function useFigure(store: Store, proposal: Proposal): Promise<void> {
  const { figure, of } = proposal;
  const payload = { figure, of, who: store.get().who };
  const changed = await work(store, 'Writing the figure…', 'adoptFigure', payload);
  if (changed === undefined) return;
  const title = proposalTitle(proposal);
  showChange(store, changed, {
    now: `${title}: the measured figure is in use. Measured figures keeps what stood there.`,
    before: `${title}: the book held that figure already, so nothing was written.`,
  });
}

/** Brings back what stood in the book before. */
export async function goBack(store: Store, proposal: Proposal): Promise<void> {
  const { figure, of, back } = proposal;
  if (back?.kind !== 'ready') return;
  const payload = { figure, of, entry: back.entry, who: store.get().who };
  const changed = await work(store, 'Taking the figure back…', 'revertFigure', payload);
  if (changed === undefined) return;
  const title = proposalTitle(proposal);
  showChange(store, changed, {
    now: `${title}: the older figure is back.`,
    before: `${title}: it was taken back already, so nothing was written.`,
  });
}

function showChange(
  store: Store,
  changed: FigureChanged,
  words: Readonly<Record<FigureChanged['changed'], string>>,
): void {
  store.set({ view: { kind: 'trials', trials: changed }, notice: done(words[changed.changed]) });
}
