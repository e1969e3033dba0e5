import type { PlainElement } from '../elements/plainElement.ts';
import type { QualityPicture } from '../outcomes/quality/qualitySummary.ts';
import { controlChartPicture } from './controlChart/controlChartPicture.ts';
import { paretoPicture } from './pareto/paretoPicture.ts';
import { yieldCurvePicture } from './yieldCurve/yieldCurvePicture.ts';

/** Height of the yield curve [px]. */
const HEIGHT = 320;

/**
 * Draws a picture of what the log holds; the panel draws these and carries no other.
 * @param width - [px], at least 300
 */
export function drawQualityPicture(picture: QualityPicture, width: number): PlainElement {
  switch (picture.kind) {
    case 'share-chart':
    case 'weight-chart':
      return controlChartPicture(picture, width);
    case 'defect-pareto':
      return paretoPicture(picture, width);
    case 'yield-curve':
      return yieldCurvePicture(picture, { width, height: HEIGHT });
  }
}
