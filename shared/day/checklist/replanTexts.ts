import { hoursText } from '../../words/hoursText.ts';
import { countText } from '../../words/quantityText.ts';
import type { Replanned } from '../planning/replanDay.ts';

/** What the ticks have changed: which due dates suffer, which windows were missed, what was taken as done. */
export function replanTexts({ suffers, brokenWindows, assumed }: Replanned): readonly string[] {
  const late = suffers.map(({ order, late: now, wasLate }) =>
    wasLate === 0
      ? `Order ${order} is ${hoursText(now)} late; it was in time before.`
      : `Order ${order} is ${hoursText(now)} late; it was ${hoursText(wasLate)} late before.`,
  );
  const windows = brokenWindows.map(
    ({ before, after, late: over }) =>
      `${after} comes ${hoursText(over)} past its latest moment after ${before}: tear-test those pieces before packing.`,
  );
  const taken =
    assumed.length === 0
      ? []
      : [
          `${countText(assumed.length, 'task')} without a tick taken as done, since what follows was ticked.`,
        ];
  return [...(late.length === 0 ? ['No due date suffers.'] : late), ...windows, ...taken];
}
