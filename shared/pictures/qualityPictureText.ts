import type { QualityPicture } from '../outcomes/quality/qualitySummary.ts';
import { controlChartText } from './controlChart/controlChartText.ts';
import { paretoText } from './pareto/paretoText.ts';
import { yieldCurveText } from './yieldCurve/yieldCurveText.ts';

/** The text alternative of a picture of what the log holds; the panel says these and carries no other. */
export function qualityPictureText(picture: QualityPicture): string {
  switch (picture.kind) {
    case 'share-chart':
    case 'weight-chart':
      return controlChartText(picture);
    case 'defect-pareto':
      return paretoText(picture);
    case 'yield-curve':
      return yieldCurveText(picture);
  }
}
