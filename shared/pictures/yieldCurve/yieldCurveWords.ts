import type { YieldAgainstTop } from '../../outcomes/quality/yieldPicture.ts';
import { sayCount, sayShare, sayTemperature } from '../../words/say.ts';

/** The yield picture in words, from the same numbers. */
export function yieldCurveWords(picture: YieldAgainstTop): string {
  const { title, curve, rounds, boilingPoint, system, says } = picture;
  const ends = [curve[0], curve[curve.length - 1]].flatMap((one) =>
    one === undefined
      ? []
      : [
          `${sayPercent(one.rate)} good at ${sayTemperature(one.moldTop, system)} (${sayPercent(one.low)} to ${sayPercent(one.high)})`,
        ],
  );
  const pieces = rounds.reduce((sum, { poured }) => sum + poured, 0);
  return [
    `${title}: ${sayCount(rounds.length, 'round')}, ${sayCount(pieces, 'piece')}.`,
    `The curve runs from ${ends.join(' to ')}.`,
    ...says,
    `Water boils at ${sayTemperature(boilingPoint, system)} here.`,
  ].join(' ');
}

function sayPercent(share: number): string {
  return sayShare(Math.round(share * 100) / 100);
}
