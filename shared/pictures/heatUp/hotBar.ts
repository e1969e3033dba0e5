import type { PlainElement } from '../../elements/plainElement.ts';
import { GRAY, outline, type Point } from '../../elements/shape.ts';
import type { HeatUp } from './heatUp.ts';

export type Target = NonNullable<HeatUp['target']>;

/** From the earliest to the latest moment at which the top may be hot enough; open where that is beyond the plot or never. */
export function hotBar(
  [from, to]: readonly [from: number, to: number],
  y: number,
  isOpen: boolean,
): PlainElement {
  const looks = { fill: '#fff', stroke: GRAY.text, 'stroke-width': 1.4 };
  const [top, bottom] = [y - 4, y + 4];
  const end: readonly Point[] = isOpen ? [[to + 9, y]] : [];
  return outline([[from, top], [to, top], ...end, [to, bottom], [from, bottom]], looks);
}
