import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, textShape } from '../../elements/shape.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { hourText } from '../../words/momentText.ts';
import { textWidth } from '../chart/fitText.ts';
import type { DayColumn } from './dayColumns.ts';

const HOUR = 3600;

/** A line at every full hour, named where there is room for the name. */
export function hourTicks(
  columns: readonly DayColumn[],
  { top, bottom, system }: { top: number; bottom: number; system: UnitSystem },
): readonly PlainElement[] {
  return columns.flatMap((column) => {
    const { from, to, left, right, x } = column;
    const first = Math.ceil(from / HOUR);
    const count = Math.max(0, Math.floor(to / HOUR) - first + 1);
    const hours = Array.from({ length: count }, (_, index) => first + index);
    const wide = textWidth('12 pm', FONT.small) + 8;
    const perHour = ((right - left) * HOUR) / Math.max(to - from, 1);
    const step = [1, 2, 3, 4, 6, 12].find((one) => one * perHour >= wide) ?? 24;
    return [
      ...hours.map((hour) =>
        segment([x(hour * HOUR), top], [x(hour * HOUR), bottom], { stroke: GRAY.grid }),
      ),
      segment([left, top], [left, bottom], { stroke: GRAY.line }),
      ...hours
        .filter((hour) => hour % step === 0)
        .flatMap((hour) => {
          const at = x(hour * HOUR);
          const name = hourText(hour * HOUR, system);
          // Names of two days must not meet where the days do.
          const half = textWidth(name, FONT.small) / 2;
          if (at + half > right + 4 || at - half < left - 12) return [];
          return [textShape(at, bottom + 15, name, { size: FONT.small, anchor: 'middle' })];
        }),
    ];
  });
}
