import type { PlainElement } from '../runSheet/plainElement.ts';
import { bondPicture } from './bondPicture.ts';
import { controlChartPicture } from './controlChartPicture.ts';
import { heatTrialPicture } from './heatTrialPicture.ts';
import { heatUpPicture } from './heatUpPicture.ts';
import { layerProfilePicture } from './layerProfilePicture.ts';
import { layerTimelinePicture } from './layerTimelinePicture.ts';
import { paretoPicture } from './paretoPicture.ts';
import type { Picture } from './pictures.ts';
import { timetablePicture } from './timetablePicture.ts';
import { yieldCurvePicture } from './yieldCurvePicture.ts';

const HEIGHTS = {
  'heat-up': 380,
  'layer-profile': 360,
  'heat-trial': 420,
  bond: 360,
  'yield-curve': 320,
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
    case 'share-chart':
    case 'weight-chart':
      return controlChartPicture(picture, width);
    case 'defect-pareto':
      return paretoPicture(picture, width);
    case 'timetable':
      return timetablePicture(picture, width);
    case 'yield-curve':
      return yieldCurvePicture(picture, { width, height: HEIGHTS[picture.kind] });
  }
}
