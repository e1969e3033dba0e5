import { type BookIndex, type Evidence, nameKey, remember } from '../../book/bookIndex.ts';
import { describeIn } from '../../errors/describeIn.ts';
import type { OrderFacts } from '../facts/findOrder.ts';
import type { CupPlan } from '../heat/planCup.ts';
import type { WindowRemedy } from '../heat/windowRemedies.ts';
import type { LayerPlan, OrderPlan, PiecesPlan, Warning } from '../planTypes.ts';
import { cupWarnings } from './cupWarnings.ts';
import { heatWarnings } from './heatWarnings.ts';
import { layerWarnings } from './layerWarnings.ts';
import { loadingWarnings, recipeWarnings } from './loadingWarnings.ts';
import { pieceWarnings, timeWarnings } from './pieceWarnings.ts';

/** What the warnings look at, once everything else is planned. */
export interface Planned {
  readonly pieces: PiecesPlan;
  readonly evidence: Evidence;
  readonly layers: readonly LayerPlan[];
  readonly plate: OrderPlan['plate'];
  readonly cup: CupPlan & { readonly cookTemperature: number };
  /** What would bring late layers into their windows, worked out only where there are some */
  readonly remedies: readonly WindowRemedy[];
  /** Mold top at the first pour [degC] */
  readonly top: number;
}

/** Everything about a plan that needs an eye, most dangerous first. */
export function planWarnings(
  index: BookIndex,
  facts: OrderFacts,
  { pieces, evidence, layers, plate, cup, remedies, top }: Planned,
): readonly Warning[] {
  const { shop } = index.book;
  const { mold, pattern } = facts;
  return [
    ...loadingWarnings(facts, layers),
    ...remember(index, nameKey('recipe', pattern.name, pattern.version), () =>
      recipeWarnings(facts, shop),
    ),
    ...refusedSettings(index),
    ...remember(index, nameKey('heat', mold.name, facts.plate.name, facts.moldsInUse), () =>
      heatWarnings(facts, plate, shop.units),
    ),
    ...layerWarnings(facts, layers, { remedies, top }, shop),
    ...cupWarnings(cup, pieces, layers, shop),
    ...timeWarnings(facts),
    ...pieceWarnings(facts, pieces, evidence),
  ];
}

/** A setting that cannot be read takes its default; nobody should find that out from the bench. */
function refusedSettings({ book }: BookIndex): readonly Warning[] {
  return book.problems
    .filter((problem) => problem.sheet === 'Shop')
    .map(({ row, error }) => ({
      about: 'heat',
      text: `Shop row ${row}: ${describeIn(error, book.shop.units)}, so the default is used.`,
    }));
}
