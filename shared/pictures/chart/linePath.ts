type Point = readonly [x: number, y: number];

/** Path data of a line through points, to a tenth of a pixel; undefined where there is none. */
export function linePath(points: readonly Point[]): string | undefined {
  return points.length === 0 ? undefined : `M${points.map(pointText).join('L')}`;
}

/** Path data of the band between two lines, closed; undefined where there is no point. */
export function bandPath(upper: readonly Point[], lower: readonly Point[]): string | undefined {
  const line = linePath([...upper, ...lower.slice().reverse()]);
  return line === undefined ? undefined : `${line}Z`;
}

function pointText([x, y]: Point): string {
  return `${Math.round(x * 10) / 10},${Math.round(y * 10) / 10}`;
}
