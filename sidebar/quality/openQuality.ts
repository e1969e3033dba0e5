import type { QualityPayload } from '../../shared/commands/qualityCommands.ts';
import { countText } from '../../shared/words/quantityText.ts';
import type { Store } from '../panel/store.ts';
import { work } from '../panel/work.ts';

/** Shows yields, signals and charts of what was logged; as asked before where nothing new is asked. */
export async function openQuality(store: Store, change: QualityPayload = {}): Promise<void> {
  const asked = { ...store.get().quality?.asked, ...change };
  const quality = await work(store, 'Reading the log…', 'qualityFor', asked);
  if (quality === undefined) return;
  const texts = [
    quality.molds.length === 0
      ? 'Log read: no round is logged yet.'
      : `Log read: ${countText(quality.rounds, 'round')}.`,
  ];
  store.set({ view: 'quality', quality, notice: { kind: 'done', texts } });
}

/** Opens what is on show as a page to print. */
export async function printQuality(store: Store): Promise<void> {
  const asked = store.get().quality?.asked ?? {};
  const shown = await work(store, 'Opening the page…', 'showQuality', asked);
  if (shown === undefined) return;
  store.set({ notice: { kind: 'done', texts: ['The page of the quality is open.'] } });
}
