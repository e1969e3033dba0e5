import type { HeatTrialPictured } from './heatTrial.ts';
import type { HeatUp } from './heatUp.ts';
import type { LayerProfile } from './layerProfile.ts';
import type { LayerTimeline } from './layerTimeline.ts';

/** Everything that is drawn, as data; `kind` says which drawing it takes. */
export type Picture = HeatUp | LayerTimeline | LayerProfile | HeatTrialPictured;
