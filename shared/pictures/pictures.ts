import type { BondPictured } from './bond/bond.ts';
import type { ControlChart } from './controlChart/controlChart.ts';
import type { HeatTrialPictured } from './heatTrial/heatTrial.ts';
import type { HeatUp } from './heatUp/heatUp.ts';
import type { LayerProfile } from './layerProfile/layerProfile.ts';
import type { LayerTimeline } from './layerTimeline/layerTimeline.ts';
import type { DefectPareto } from './pareto/defectPareto.ts';
import type { Timetable } from './timetable/timetable.ts';
import type { YieldAgainstTop } from './yieldCurve/yieldAgainstTop.ts';

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
