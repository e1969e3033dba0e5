import type { OrderPlan } from '../../plan/planTypes.ts';
import type { Band, HeatDetail } from '../../plan/uncertainty/heatDetail.ts';
import type { UnitSystem } from '../../units/measures.ts';

/** What the heat-up picture shows; [s], [degC]. Without a target the mold never gets hot enough. */
export interface HeatUp {
  readonly kind: 'heat-up';
  readonly system: UnitSystem;
  readonly course: HeatDetail['heatCourse'];
  readonly readings: HeatDetail['readings'];
  readonly target?: {
    readonly top: number;
    readonly boilingPoint: number;
    readonly setting: number;
    readonly seconds: number;
    readonly band?: Band;
    readonly plateau: number;
    readonly plateauBand?: Band;
    /** From switch-on to the first pour [s] */
    readonly firstPour: number;
    /** Minutes after midnight of the day of the run */
    readonly onAt?: number;
  };
  /** Why there is no target. */
  readonly because?: string;
}

/** The heat-up of a plan; undefined before its courses are solved. */
export function heatUpOf({ plate, detail, system }: OrderPlan): HeatUp | undefined {
  if (detail === undefined || detail.heatCourse.length === 0) return undefined;
  const course = { kind: 'heat-up', system, course: detail.heatCourse } as const;
  const { readings } = detail;
  if (plate.kind === 'unreachable') return { ...course, readings, because: plate.because };
  const { heatUp: band, plateau: plateauBand } = detail;
  return {
    ...course,
    readings,
    target: {
      top: plate.topTarget,
      boilingPoint: plate.boilingPoint,
      setting: plate.setting,
      seconds: plate.heatUp,
      plateau: plate.plateau,
      firstPour: plate.heatUp + plate.readyWait,
      ...(band === undefined ? {} : { band }),
      ...(plateauBand === undefined ? {} : { plateauBand }),
      ...(plate.onAt === undefined ? {} : { onAt: plate.onAt }),
    },
  };
}
