import { expect, test } from 'vitest';
import { qualityPictureFiles } from '../../../scripts/generate/qualityPictureFiles.ts';

test('the pictures of the control chart and the yield curve stand alone, and come out the same each time', () => {
  const pictures = qualityPictureFiles();
  expect(Object.keys(pictures)).toEqual([
    'docs/pictures/control-chart.svg',
    'docs/pictures/yield-curve.svg',
  ]);
  for (const svg of Object.values(pictures))
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox=.*<\/svg>\n$/s);
  expect(qualityPictureFiles()).toEqual(pictures);
});

test('the control chart shows a signal, and says so in words', () => {
  const chart = qualityPictureFiles()['docs/pictures/control-chart.svg'];
  expect(chart).toMatch(
    /R-1002 round 1: more bad than usual, above the limit of three standard deviations/,
  );
});
