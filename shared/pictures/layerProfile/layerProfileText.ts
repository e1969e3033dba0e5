import type { UnitSystem } from '../../units/measures.ts';
import { inBrackets } from '../../words/bandText.ts';
import { durationText, temperatureText } from '../../words/quantityText.ts';
import { temperatureBandText } from '../../words/timeBandText.ts';
import type { Joint, LayerProfile } from './layerProfile.ts';

export const LAYER_PROFILE_TITLE = 'Temperature through the layers';

/** The profile picture in words, from the same numbers. */
export function layerProfileText(profile: LayerProfile): string {
  const { profiles, joints, setTemperature, bondTemperature, system } = profile;
  const say = (temperature: number) => temperatureText(temperature, system);
  const moments = profiles.flatMap(({ time, temperatures }) => {
    const [first, last] = [temperatures[0], temperatures[temperatures.length - 1]];
    if (first === undefined || last === undefined) return [];
    const hottest = say(Math.max(...temperatures));
    return [
      `After ${durationText(time)}: ${say(first)} at the mold, ${hottest} at the hottest, ${say(last)} on top.`,
    ];
  });
  const limits = `The plastic sets below ${say(setTemperature)}; layers bond where they meet above ${say(bondTemperature)}.`;
  return [...moments, limits, ...joints.map((joint) => jointText(joint, system))].join(' ');
}

function jointText({ name, contact, band, verdict }: Joint, system: UnitSystem): string {
  const sure = inBrackets(temperatureBandText(band, system));
  const outcome = verdict === 'bonds' ? 'bonds' : 'is too cool to bond';
  return `${name} meets the layer below at ${temperatureText(contact, system)}${sure} and ${outcome}.`;
}
