import type { QualityPayload } from '../../shared/commands/qualityCommands.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { lastView } from '../panel/pageState.ts';
import { type Store, shown } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Shows yields, signals and charts of what was logged; as asked before where nothing new is asked. */
export async function openQuality(store: Store, change: QualityPayload = {}): Promise<void> {
  const asked = { ...lastView(store.get(), 'quality')?.quality.asked, ...change };
  const quality = await work(store, 'Reading the log…', 'qualityFor', asked);
  if (quality === undefined) return;
  const text =
    quality.molds.length === 0
      ? 'Log read: no round is logged yet.'
      : `Log read: ${countText(quality.rounds, 'round')}.`;
  store.set({ view: { kind: 'quality', quality }, notice: done(text) });
}

/** Opens what is on show as a page to print. */
export async function printQuality(store: Store): Promise<void> {
  const asked = shown(store, 'quality')?.quality.asked ?? {};
  const opened = await work(store, 'Opening the page…', 'showQuality', asked);
  if (opened === undefined) return;
  store.set({ notice: done('The page of the quality is open.') });
}
