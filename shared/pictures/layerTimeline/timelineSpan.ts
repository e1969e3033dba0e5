import { followOf, type LayerTimeline } from './layerTimeline.ts';

/** The drawn span goes at most this many times as far as the round's last pour; what lies beyond is an arrow. */
const FARTHEST = 1.8;
/** Even a round of one cavity has some width [s]. */
const SHORTEST = 10;

/** How far the timeline is drawn, from the first pour [s]: the round and, where they are not too far off, the ends of its windows. */
export function timelineSpan({ layers }: LayerTimeline): number {
  const last = Math.max(SHORTEST, ...layers.map(({ run }) => run.lastAt));
  const ends = layers.flatMap((layer, index) => {
    const below = layers[index - 1]?.run;
    const follow = followOf(layer);
    const open =
      layer.openTime.kind === 'seconds' ? [layer.run.lastAt + layer.openTime.seconds] : [];
    if (below === undefined || follow === undefined) return open;
    const { from, to, sure } = follow;
    return [...open, ...[from, to ?? 0, sure?.from ?? 0].map((time) => below.lastAt + time)];
  });
  const within = ends.filter((end) => end <= FARTHEST * last);
  return Math.max(last * 1.12, ...within.map((end) => end * 1.04));
}
