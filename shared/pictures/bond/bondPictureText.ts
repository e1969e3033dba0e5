import type { BondPictured } from '../../trials/trialPictureTypes.ts';
import { countText, listText, temperatureText } from '../../words/quantityText.ts';

const TEARS = ['tears through', 'tears in part', 'peels clean'] as const;

/** The picture of a bond fit in words, from the same numbers. */
export function bondPictureText({ title, joints, threshold, inUse, system }: BondPictured): string {
  const degrees = (value: number) => temperatureText(value, system);
  const counts = TEARS.flatMap((tear) => {
    const met = joints.filter((joint) => joint.tear === tear).map((one) => one.contactTemperature);
    if (met.length === 0) return [];
    return [`${met.length} ${tear}, ${degrees(Math.min(...met))} to ${degrees(Math.max(...met))}`];
  });
  return [
    `${title}: ${countText(joints.length, 'joint')}.`,
    ...(counts.length === 0 ? [] : [`Of these ${listText(counts)}.`]),
    ...(threshold
      ? [
          `Half bond at ${degrees(threshold.value)}, between ${degrees(threshold.low)} and ${degrees(threshold.high)} nine times out of ten.`,
        ]
      : []),
    `Bond temperature in use: ${degrees(inUse)}.`,
  ].join(' ');
}
