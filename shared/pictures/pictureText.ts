import { bondPictureText } from './bond/bondPictureText.ts';
import { heatTrialText } from './heatTrial/heatTrialText.ts';
import { HEAT_UP_TITLE, heatUpText } from './heatUp/heatUpText.ts';
import { LAYER_PROFILE_TITLE, layerProfileText } from './layerProfile/layerProfileText.ts';
import { LAYER_TIMELINE_TITLE, layerTimelineText } from './layerTimeline/layerTimelineText.ts';
import type { Picture } from './pictureTypes.ts';
import { qualityPictureText } from './qualityPictureText.ts';
import { timetableText } from './timetable/timetableText.ts';

/** What a picture is called. */
export function pictureTitle(picture: Picture): string {
  switch (picture.kind) {
    case 'heat-up':
      return HEAT_UP_TITLE;
    case 'layer-timeline':
      return LAYER_TIMELINE_TITLE;
    case 'layer-profile':
      return LAYER_PROFILE_TITLE;
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
    case 'timetable':
      return timetableText(picture);
    case 'share-chart':
    case 'weight-chart':
    case 'defect-pareto':
    case 'yield-curve':
      return qualityPictureText(picture);
  }
}
