import { sayDuration, sayTemperature } from '../runSheet/say.ts';
import type { LayerProfile } from './layerProfile.ts';

/** The profile picture in words, from the same numbers. */
export function layerProfileWords(profile: LayerProfile): string {
  const { profiles, setTemperature, bondTemperature, system } = profile;
  const moments = profiles.map(({ time, temperatures }) => {
    const [first, last] = [temperatures[0], temperatures[temperatures.length - 1]];
    if (first === undefined || last === undefined) return '';
    const hottest = Math.max(...temperatures);
    const say = (temperature: number) => sayTemperature(temperature, system);
    return `After ${sayDuration(time)}: ${say(first)} at the mold, ${say(hottest)} at the hottest, ${say(last)} on top.`;
  });
  const limits = `The plastic sets below ${sayTemperature(setTemperature, system)}; a seam bonds above ${sayTemperature(bondTemperature, system)}.`;
  return [...moments.filter((one) => one !== ''), limits].join(' ');
}
