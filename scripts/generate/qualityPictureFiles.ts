import { qualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import type { Picture } from '../../shared/pictures/pictureTypes.ts';
import { demoBook } from '../../templates/demoShop/demoBook.ts';
import { svgFile } from './svgFile.ts';

/** The day that the invented shop's books are looked at. */
const DAY = '2026-12-01';

/** docs/pictures/control-chart.svg and yield-curve.svg: the invented shop's rounds, as the panel draws them. */
export function qualityPictureFiles(): Readonly<Record<string, string>> {
  const { pictures } = qualitySummary(demoBook(), DAY, { points: 'rounds' });
  return {
    'docs/pictures/control-chart.svg': drawn(pictures, 'share-chart'),
    'docs/pictures/yield-curve.svg': drawn(pictures, 'yield-curve'),
  };
}

function drawn(pictures: readonly Picture[], kind: Picture['kind']): string {
  const picture = pictures.find((one) => one.kind === kind);
  if (picture === undefined) throw new Error(`the demo shop has no ${kind} to draw`);
  return svgFile(picture);
}
