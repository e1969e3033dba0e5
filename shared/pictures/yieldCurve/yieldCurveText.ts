import type { YieldAgainstTop } from '../../outcomes/quality/yieldPicture.ts';
import { percentText } from '../../words/percentText.ts';
import { countText, temperatureText } from '../../words/quantityText.ts';

/** The yield picture in words, from the same numbers. */
export function yieldCurveText(picture: YieldAgainstTop): string {
  const { title, curve, rounds, boilingPoint, system, says } = picture;
  const ends = [curve[0], curve[curve.length - 1]].flatMap((one) =>
    one === undefined
      ? []
      : [
          `${percentText(one.rate)} good at ${temperatureText(one.moldTop, system)} (${percentText(one.low)} to ${percentText(one.high)})`,
        ],
  );
  const pieces = rounds.reduce((sum, { poured }) => sum + poured, 0);
  return [
    `${title}: ${countText(rounds.length, 'round')}, ${countText(pieces, 'piece')}.`,
    `The curve runs from ${ends.join(' to ')}.`,
    ...says,
    `Water boils at ${temperatureText(boilingPoint, system)} here.`,
  ].join(' ');
}
