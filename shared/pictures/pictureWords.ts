import { bondPictureWords } from './bond/bondPictureWords.ts';
import { controlChartWords } from './controlChart/controlChartWords.ts';
import { heatTrialWords } from './heatTrial/heatTrialWords.ts';
import { heatUpWords } from './heatUp/heatUpWords.ts';
import { layerProfileWords } from './layerProfile/layerProfileWords.ts';
import { layerTimelineWords } from './layerTimeline/layerTimelineWords.ts';
import { paretoWords } from './pareto/paretoWords.ts';
import type { Picture } from './pictures.ts';
import { timetableWords } from './timetable/timetableWords.ts';
import { yieldCurveWords } from './yieldCurve/yieldCurveWords.ts';

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
export function pictureWords(picture: Picture): string {
  switch (picture.kind) {
    case 'heat-up':
      return heatUpWords(picture);
    case 'layer-timeline':
      return layerTimelineWords(picture);
    case 'layer-profile':
      return layerProfileWords(picture);
    case 'heat-trial':
      return heatTrialWords(picture);
    case 'bond':
      return bondPictureWords(picture);
    case 'share-chart':
    case 'weight-chart':
      return controlChartWords(picture);
    case 'defect-pareto':
      return paretoWords(picture);
    case 'timetable':
      return timetableWords(picture);
    case 'yield-curve':
      return yieldCurveWords(picture);
  }
}
