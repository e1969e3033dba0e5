import type { SolvedLayer } from '../../heat/solver/solvedLayer.ts';

/** Figures of one layer in one draw [s], [degC]; +infinity where a layer stays open, is never firm, or may be followed any time. */
export interface LayerAnswers {
  readonly open: number;
  /** Of the window on the layer below, and the contact with it; absent for the first layer */
  readonly onBelow?: {
    readonly earliest: number;
    readonly latest: number;
    readonly contact?: number;
  };
}

/** The answers of every layer from its solved life, bottom first. */
export function layerAnswers(solved: readonly SolvedLayer[]): readonly LayerAnswers[] {
  return solved.map(({ open }, index) => {
    const below = solved[index - 1];
    return { open: seconds(open), ...(below && { onBelow: onBelow(below) }) };
  });
}

function onBelow({ earliest, latest, joint }: SolvedLayer): LayerAnswers['onBelow'] & object {
  return {
    earliest: seconds(earliest),
    latest: seconds(latest),
    ...(joint && { contact: joint.contactTemperature }),
  };
}

function seconds(time: SolvedLayer['open' | 'earliest' | 'latest']): number {
  switch (time.kind) {
    case 'seconds':
      return time.seconds;
    case 'sets at once':
    case 'at once':
    case 'too late from the start':
      return 0;
    case 'stays open':
    case 'never firm':
    case 'any time':
      return Number.POSITIVE_INFINITY;
  }
}
