import type { PlainElement } from '../../elements/plainElement.ts';
import type { BondPictured } from '../../trials/trialPictureTypes.ts';
import { type LegendItem, markSwatch } from '../chart/legend.ts';
import type { PlotFrame } from '../chart/plotFrame.ts';
import { pointMark } from '../chart/pointMark.ts';

/** Form and height of a joint's mark: a bond stands at the top, a clean peel at the bottom. */
const TEAR_MARKS = {
  'tears through': { form: 0, share: 1 },
  'tears in part': { form: 3, share: 0.5 },
  'peels clean': { form: 4, share: 0 },
} as const;

/** Marks nearer than this across are stacked, each so far from the one before [px]. */
const NEAR = 9;
const STEP = 10;
/** Stacks as high at most; further marks lie on the last. */
const HIGHEST = 5;

/** A mark for every joint at its contact temperature, stacked where several are near. */
export function jointMarks({ joints }: BondPictured, frame: PlotFrame): readonly PlainElement[] {
  const placed: { readonly x: number; readonly share: number; readonly level: number }[] = [];
  return [...joints]
    .sort((one, other) => one.contactTemperature - other.contactTemperature)
    .map((joint) => {
      const { form, share } = TEAR_MARKS[joint.tear];
      const [x, y] = [frame.x(joint.contactTemperature), frame.y(share)];
      const near = placed.filter((one) => one.share === share && x - one.x < NEAR);
      const level = Math.min(
        HIGHEST,
        near.length === 0 ? 0 : firstFree(near.map((one) => one.level)),
      );
      placed.push({ x, share, level });
      return pointMark([x, y + level * STEP * (share === 0 ? 1 : -1)], form);
    });
}

function firstFree(levels: readonly number[]): number {
  let level = 0;
  while (levels.includes(level)) level += 1;
  return level;
}

/** What the marks mean, those that are there. */
export function jointLegend({ joints }: BondPictured): readonly LegendItem[] {
  const tears = Object.keys(TEAR_MARKS) as (keyof typeof TEAR_MARKS)[]; // keys of the table above
  return tears
    .filter((tear) => joints.some((joint) => joint.tear === tear))
    .map((tear) => ({ draw: markSwatch(TEAR_MARKS[tear].form), text: tear }));
}
