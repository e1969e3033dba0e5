import type { Shop } from '../book/settings/settings.ts';
import type { OrderPlan } from '../plan/planTypes.ts';
import { heatUpOf } from './heatUp/heatUp.ts';
import { layerProfileOf } from './layerProfile/layerProfile.ts';
import { layerTimelineOf } from './layerTimeline/layerTimeline.ts';
import type { Picture } from './pictureTypes.ts';

/** The pictures of a plan, in the order of the work; those of curves only where the plan has them. */
export function heatPictures(
  plan: OrderPlan,
  shop: Pick<Shop, 'setTemperature' | 'bondTemperature'>,
): readonly Picture[] {
  const pictures = [heatUpOf(plan), layerTimelineOf(plan), layerProfileOf(plan, shop)];
  return pictures.filter((one) => one !== undefined);
}
