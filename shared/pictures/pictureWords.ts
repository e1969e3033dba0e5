import { heatTrialWords } from './heatTrialWords.ts';
import { heatUpWords } from './heatUpWords.ts';
import { layerProfileWords } from './layerProfileWords.ts';
import { layerTimelineWords } from './layerTimelineWords.ts';
import type { Picture } from './pictures.ts';

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
  }
}
