import type { ControlChart } from '../outcomes/quality/controlChart.ts';
import type { DefectPareto } from '../outcomes/quality/defectPareto.ts';
import type { YieldAgainstTop } from '../outcomes/quality/yieldPicture.ts';
import type { BondPictured, HeatTrialPictured } from '../trials/trialPictureTypes.ts';
import type { HeatUp } from './heatUp/heatUp.ts';
import type { LayerProfile } from './layerProfile/layerProfile.ts';
import type { LayerTimeline } from './layerTimeline/layerTimeline.ts';
import type { Timetable } from './timetable/timetable.ts';

/** Everything that is drawn, as data; `kind` says which drawing it takes. */
export type Picture =
  | HeatUp
  | LayerTimeline
  | LayerProfile
  | HeatTrialPictured
  | BondPictured
  | ControlChart
  | DefectPareto
  | YieldAgainstTop
  | Timetable;
