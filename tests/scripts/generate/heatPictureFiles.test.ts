import { expect, test } from 'vitest';
import { heatPictureFiles } from '../../../scripts/generate/heatPictureFiles.ts';

test('the pictures of the docs stand alone, and come out the same each time', () => {
  const pictures = heatPictureFiles();
  expect(Object.keys(pictures).sort()).toEqual([
    'docs/pictures/heat-trial.svg',
    'docs/pictures/heat-up.svg',
    'docs/pictures/layer-profile.svg',
    'docs/pictures/layer-timeline.svg',
  ]);
  for (const svg of Object.values(pictures))
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox=.*<\/svg>\n$/s);
  expect(heatPictureFiles()).toEqual(pictures);
});
