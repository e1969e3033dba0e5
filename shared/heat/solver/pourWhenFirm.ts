import type { LayerStack } from './layerStack.ts';
import { solveLayers } from './solveLayers.ts';

type Pour = LayerStack['pours'][number];

/** Nobody pours two layers closer together [s]. */
const SHORTEST_GAP = 1;

/**
 * Pours that each land as soon as the layer below is firm.
 *
 * Solved anew for each layer, since the next one lands where the solution of those below says.
 *
 * @param layers - bottom first
 * @returns in order; fewer than given where a layer never gets firm
 * @throws InputError as `solveLayers`
 */
export function pourWhenFirm(
  layers: readonly Omit<Pour, 'time'>[],
  stack: Omit<LayerStack, 'pours'>,
): readonly Pour[] {
  const pours: Pour[] = [];
  let time = 0;
  for (const layer of layers) {
    pours.push({ ...layer, time });
    if (pours.length === layers.length) break;
    const solved = solveLayers({ ...stack, pours });
    const earliest = solved.layers[pours.length - 1]?.earliest;
    if (earliest === undefined || earliest.kind === 'never firm') break;
    time += Math.max(SHORTEST_GAP, earliest.kind === 'seconds' ? earliest.seconds : 0);
  }
  return pours;
}
