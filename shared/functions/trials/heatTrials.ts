import type { HeatTrial } from '../../heat/fit/heatTrial.ts';
import type { HeatingMold } from '../../heat/heatUp/heatingMold.ts';

/** Readings as a sheet lists them, one place each in every list; no trial numbers for a single heating. */
interface ReadingLists {
  readonly minutes: readonly number[];
  readonly moldTops: readonly number[];
  readonly settings: readonly number[];
  readonly trialNumbers: readonly number[];
}

/**
 * Readings sorted into heatings, by trial number and setting. What is read at 0 minutes is where that mold starts, and no
 * reading to be met; without it the mold starts at the room's temperature.
 */
export function heatTrials(
  { minutes, moldTops, settings, trialNumbers }: ReadingLists,
  mold: HeatingMold,
  roomTemperature: number,
): readonly HeatTrial[] {
  const rows = minutes.map((seconds, index) => ({
    seconds,
    top: moldTops[index] ?? Number.NaN,
    setting: settings[index] ?? Number.NaN,
    heating: `${trialNumbers[index] ?? ''} ${settings[index] ?? ''}`,
  }));
  return [...new Set(rows.map(({ heating }) => heating))].map((heating) => {
    const own = rows.filter((row) => row.heating === heating);
    const starts = own.filter(({ seconds }) => seconds === 0);
    const start = starts.reduce((sum, { top }) => sum + top, 0) / starts.length;
    return {
      plate: { kind: 'held', setting: own[0]?.setting ?? Number.NaN },
      mold: starts.length > 0 ? { ...mold, startTemperature: start } : mold,
      roomTemperature,
      readings: own
        .filter(({ seconds }) => seconds > 0)
        .map(({ seconds, top }) => ({ seconds, top })),
    };
  });
}
