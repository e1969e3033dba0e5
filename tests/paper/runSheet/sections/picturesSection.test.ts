import { describe, expect, test } from 'vitest';
import { elementsToHtml } from '../../../../shared/elements/elementsToHtml.ts';
import { runSheetCells } from '../../../../shared/paper/runSheet/runSheetCells.ts';
import { runSheetDocument } from '../../../../shared/paper/runSheet/runSheetDocument.ts';
import { runSheetElements } from '../../../../shared/paper/runSheet/runSheetElements.ts';
import { pictureText } from '../../../../shared/pictures/pictureText.ts';
import { planOrder } from '../../../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../../../shared/plan/planTypes.ts';
import type { HeatDetail } from '../../../../shared/plan/uncertainty/heatDetail.ts';
import { demoBook } from '../../../book/demoBook.ts';
import { HEAT_UP } from '../../../pictures/pictureData.ts';

const RUN = { runId: '2041-1', date: '2026-12-01' };

/** Constructed courses; the bands are not looked at here. */
const DETAIL: HeatDetail = {
  draws: 1,
  seed: 1,
  cupTime: {},
  layers: [],
  heatCourse: HEAT_UP.course,
  readings: HEAT_UP.readings,
  layerCourses: [],
  profiles: [],
  jointHeights: [],
};

function planned(): OrderPlan {
  const plan = planOrder(demoBook(), '2041');
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  return plan;
}

function picturesOf(plan: OrderPlan) {
  const section = runSheetDocument(plan, RUN).sections.find(({ name }) => name === 'pictures');
  const blocks = section?.blocks ?? [];
  return blocks.flatMap((block) => (block.kind === 'picture' ? [block.picture] : []));
}

describe('pictures of a run sheet', () => {
  test('are data that survives the way to a page', () => {
    const pictures = picturesOf({ ...planned(), detail: DETAIL });
    expect(pictures.map(({ kind }) => kind)).toEqual(['heat-up', 'layer-timeline']);
    expect(JSON.parse(JSON.stringify(pictures))).toEqual(pictures);
  });

  test('a plan without courses still has its round', () => {
    expect(picturesOf(planned()).map(({ kind }) => kind)).toEqual(['layer-timeline']);
  });

  test('carry the figures of the plan', () => {
    const plan = planned();
    const [round] = picturesOf(plan);
    if (round?.kind !== 'layer-timeline') throw new Error('no round');
    expect(round.layers.map(({ name, run, window }) => ({ name, run, window }))).toEqual(
      plan.layers.map(({ order, layer, run, window }) => ({
        name: `${order} ${layer}`,
        run,
        window,
      })),
    );
  });

  test('are drawn on the page with their words below, the run named above', () => {
    const plan = { ...planned(), detail: DETAIL };
    const html = elementsToHtml(runSheetElements(runSheetDocument(plan, RUN)));
    expect(html.match(/<figure><svg [^>]*role="img"/g)).toHaveLength(2);
    expect(html.match(/<figcaption>/g)).toHaveLength(2);
    expect(html).toContain('Run 2041-1 in pictures');
  });

  test('are lines of words on the tab', () => {
    const plan = { ...planned(), detail: DETAIL };
    const values = runSheetCells(runSheetDocument(plan, RUN)).rows.flatMap(({ cells }) =>
      cells.map(({ value }) => value),
    );
    for (const picture of picturesOf(plan)) expect(values).toContain(pictureText(picture));
  });
});
