import { bondPictureText } from './bond/bondPictureText.ts';
import { controlChartText } from './controlChart/controlChartText.ts';
import { heatTrialText } from './heatTrial/heatTrialText.ts';
import { heatUpText } from './heatUp/heatUpText.ts';
import { layerProfileText } from './layerProfile/layerProfileText.ts';
import { layerTimelineText } from './layerTimeline/layerTimelineText.ts';
import { paretoText } from './pareto/paretoText.ts';
import type { Picture } from './pictureTypes.ts';
import { timetableText } from './timetable/timetableText.ts';
import { yieldCurveText } from './yieldCurve/yieldCurveText.ts';

/** What a picture is called. */
export function pictureTitle(picture: Picture): string {
  switch (picture.kind) {
    case 'heat-up':
      return 'How the mold heats up';
    case 'layer-timeline':
      return 'One round, layer by layer';
    case 'layer-profile':
      return 'Temperature through the layers';
    case 'heat-trial':
    case 'bond':
    case 'share-chart':
    case 'weight-chart':
    case 'defect-pareto':
    case 'yield-curve':
    case 'timetable':
      return picture.title;
  }
}

/** The text alternative of a picture. */
export function pictureText(picture: Picture): string {
  switch (picture.kind) {
    case 'heat-up':
      return heatUpText(picture);
    case 'layer-timeline':
      return layerTimelineText(picture);
    case 'layer-profile':
      return layerProfileText(picture);
    case 'heat-trial':
      return heatTrialText(picture);
    case 'bond':
      return bondPictureText(picture);
    case 'share-chart':
    case 'weight-chart':
      return controlChartText(picture);
    case 'defect-pareto':
      return paretoText(picture);
    case 'timetable':
      return timetableText(picture);
    case 'yield-curve':
      return yieldCurveText(picture);
  }
}
