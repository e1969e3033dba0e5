import type { BookIndex } from '../../book/bookIndex.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import type { SolvedLayer } from '../../heat/solver/solvedLayer.ts';
import { plateOutcome } from '../../plan/computePlan.ts';
import { findOrder } from '../../plan/facts/findOrder.ts';
import { hardStop } from '../../plan/facts/hardStop.ts';
import { topTargetOf } from '../../plan/heat/plateHeat.ts';
import { planRow } from '../../plan/planOrder.ts';
import type { OrderPlan } from '../../plan/planTypes.ts';
import { loadingWarnings } from '../../plan/warnings/loadingWarnings.ts';
import { loggedOrder } from './loggedFacts.ts';
import { type LogReadings, logReadings, type TearTest } from './logReadings.ts';
import type { JointFigures, LayerFigures, RunFigures } from './runFigures.ts';
import { runHeat } from './runHeat.ts';

export interface NoPlan {
  readonly kind: 'no plan';
  readonly because: string;
}

/** The figures of a row that the rules look at. */
export function rowFigures(index: BookIndex, record: PourLogRecord): RunFigures | NoPlan {
  const order = loggedOrder(index, record);
  const found = findOrder(index, order);
  const plan = planRow(index, order);
  if (found.kind === 'missing') return noPlan(found.missing);
  if (plan.kind === 'missing') return noPlan(plan.missing);
  const { facts } = found;
  const { shop } = index.book;
  const readings = logReadings(record, facts.pattern.layers.length);
  const solved = runHeat(index, facts, readings);
  const outcome = plateOutcome(index, facts);
  const target = topTargetOf(shop);
  const isTwoPiece = facts.mold.kind === 'two-piece';
  return {
    system: shop.units,
    ...(readings.moldTop === undefined ? {} : { moldTop: readings.moldTop }),
    topTarget: target,
    hottestTop: Math.max(target, outcome.kind === 'reachable' ? outcome.plateau : outcome.top),
    bondTemperature: shop.bondTemperature,
    lowestPour: shop.lowestPour,
    hardStop: hardStop(facts, shop),
    layers: facts.pattern.layers.map((_, layer) => layerOf(plan, readings, solved, layer)),
    isTwoPiece,
    joints: isTwoPiece ? [] : jointsOf(plan, readings, solved),
    heatShare: plan.heatUsed,
    overLimit: loadingWarnings(facts, plan.layers).map(({ text }) => text),
    blanks: readings.blanks,
  };
}

function noPlan(missing: readonly { readonly text: string }[]): NoPlan {
  return { kind: 'no plan', because: missing[0]?.text ?? '' };
}

function layerOf(
  plan: OrderPlan,
  { pours }: LogReadings,
  solved: readonly SolvedLayer[],
  layer: number,
): LayerFigures {
  const pour = pours[layer];
  const open = solved[layer]?.open;
  const planned = plan.layers[layer];
  return {
    name: planned?.layer ?? '',
    planned: planned?.pourTemperature ?? Number.NaN,
    ...(pour === undefined ? {} : { pour }),
    ...(open === undefined ? {} : { open }),
  };
}

function jointsOf(
  { layers }: OrderPlan,
  { gaps, tears, wholeTear }: LogReadings,
  solved: readonly SolvedLayer[],
): readonly JointFigures[] {
  return solved.flatMap(({ joint, earliest, latest, surfaceNeeded }, place) => {
    const [below, above] = [layers[place], layers[place + 1]];
    const gap = gaps[place];
    if (!joint || !below || !above || gap === undefined) return [];
    const tear: TearTest | undefined =
      tears[place] ?? (wholeTear === 'tears through' ? wholeTear : undefined);
    return [
      {
        below: below.layer,
        above: above.layer,
        gap,
        earliest,
        latest,
        ...(above.window && above.window.kind !== 'none'
          ? { plannedEarliest: above.window.earliest }
          : {}),
        surface: joint.surfaceBefore,
        surfaceNeeded,
        contactTemperature: joint.contactTemperature,
        ...(tear === undefined ? {} : { tear }),
      },
    ];
  });
}
