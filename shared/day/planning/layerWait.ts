import type { PlannedRun, RunLayer } from './plannedRun.ts';

/** From the first pour of one layer to the first of the next [s], whole seconds. */
export type LayerWait =
  | { readonly kind: 'wait'; readonly least: number; readonly most?: number }
  | { readonly kind: 'none'; readonly because: string };

/**
 * When a layer's pass may begin after the one below: as soon as the plan has it, and so that no cavity waits past its latest.
 * Rounded to whole seconds inside the window.
 */
export function layerWait(below: RunLayer, above: RunLayer): LayerWait {
  const { window, run, layer } = above;
  const start = run.firstAt - below.run.firstAt;
  const least = Math.ceil(start);
  if (window?.kind === 'none')
    return { kind: 'none', because: `${layer} cannot follow ${below.layer}: ${window.because}` };
  if (window?.kind !== 'between') return { kind: 'wait', least };
  // What the cavity that waits longest waits beyond the start of the pass.
  const beyond = Math.max(0, (run.wait?.longest ?? start) - start);
  const most = Math.floor(window.latest - beyond);
  if (most >= least) return { kind: 'wait', least, most };
  const because = `${layer} reaches the last cavity ${Math.ceil(start + beyond - window.latest)} s after its latest moment on ${below.layer}`;
  return { kind: 'none', because };
}

/** Why an order's layers have no times at all, whatever the day is like; undefined where they have. */
export function closedWindow({ layers }: PlannedRun): string | undefined {
  for (let index = 1; index < layers.length; index += 1) {
    const [below, above] = [layers[index - 1], layers[index]];
    const wait = below && above && layerWait(below, above);
    if (wait?.kind === 'none') return wait.because;
  }
  return undefined;
}
