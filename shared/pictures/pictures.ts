import type { BondPictured } from './bond.ts';
import type { ControlChart } from './controlChart.ts';
import type { DefectPareto } from './defectPareto.ts';
import type { HeatTrialPictured } from './heatTrial.ts';
import type { HeatUp } from './heatUp.ts';
import type { LayerProfile } from './layerProfile.ts';
import type { LayerTimeline } from './layerTimeline.ts';
import type { Timetable } from './timetable.ts';
import type { YieldAgainstTop } from './yieldAgainstTop.ts';

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
