import type { UnitSystem } from '../../units/measures.ts';
import { sayDuration, sayTemperature } from '../../words/say.ts';
import { sayBand } from '../../words/sayBand.ts';
import type { Joint, LayerProfile } from './layerProfile.ts';

/** The profile picture in words, from the same numbers. */
export function layerProfileWords(profile: LayerProfile): string {
  const { profiles, joints, setTemperature, bondTemperature, system } = profile;
  const say = (temperature: number) => sayTemperature(temperature, system);
  const moments = profiles.flatMap(({ time, temperatures }) => {
    const [first, last] = [temperatures[0], temperatures[temperatures.length - 1]];
    if (first === undefined || last === undefined) return [];
    const hottest = say(Math.max(...temperatures));
    return [
      `After ${sayDuration(time)}: ${say(first)} at the mold, ${hottest} at the hottest, ${say(last)} on top.`,
    ];
  });
  const limits = `The plastic sets below ${say(setTemperature)}; layers bond where they meet above ${say(bondTemperature)}.`;
  return [...moments, limits, ...joints.map((joint) => jointWords(joint, system))].join(' ');
}

function jointWords({ name, contact, band, verdict }: Joint, system: UnitSystem): string {
  const sure = sayBand(
    band,
    (low) => sayTemperature(low, system, 'down'),
    (high) => sayTemperature(high, system, 'up'),
  );
  const outcome = verdict === 'bonds' ? 'bonds' : 'is too cool to bond';
  return `${name} meets the layer below at ${sayTemperature(contact, system)}${sure} and ${outcome}.`;
}
