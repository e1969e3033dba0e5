import type { PlainElement } from '../elements/plainElement.ts';
import { bondPicture } from './bond/bondPicture.ts';
import { drawQualityPicture } from './drawQualityPicture.ts';
import { heatTrialPicture } from './heatTrial/heatTrialPicture.ts';
import { heatUpPicture } from './heatUp/heatUpPicture.ts';
import { layerProfilePicture } from './layerProfile/layerProfilePicture.ts';
import { layerTimelinePicture } from './layerTimeline/layerTimelinePicture.ts';
import type { Picture } from './pictureTypes.ts';
import { timetablePicture } from './timetable/timetablePicture.ts';

const HEIGHTS = {
  'heat-up': 380,
  'layer-profile': 360,
  'heat-trial': 420,
  bond: 360,
} as const;

/**
 * Draws any picture; its height follows from what is drawn.
 * @param width - [px], at least 300
 */
export function drawPicture(picture: Picture, width: number): PlainElement {
  switch (picture.kind) {
    case 'heat-up':
      return heatUpPicture(picture, { width, height: HEIGHTS[picture.kind] });
    case 'layer-timeline':
      return layerTimelinePicture(picture, width);
    case 'layer-profile':
      return layerProfilePicture(picture, { width, height: HEIGHTS[picture.kind] });
    case 'heat-trial':
      return heatTrialPicture(picture, { width, height: HEIGHTS[picture.kind] });
    case 'bond':
      return bondPicture(picture, { width, height: HEIGHTS[picture.kind] });
    case 'timetable':
      return timetablePicture(picture, width);
    case 'share-chart':
    case 'weight-chart':
    case 'defect-pareto':
    case 'yield-curve':
      return drawQualityPicture(picture, width);
  }
}
