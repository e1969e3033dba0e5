import { indexBook, nameKey, type OrderRow } from '../../shared/book/bookIndex.ts';
import { heatUpCourse } from '../../shared/heat/heatUp/heatUpCourse.ts';
import { solveLayers } from '../../shared/heat/solver/solveLayers.ts';
import { planRow } from '../../shared/plan/planOrder.ts';
import { planInDetail } from '../../shared/trials/planInDetail.ts';
import { demoBook } from '../../templates/demoShop/demoBook.ts';
import { median } from './loadTimes.ts';

export interface HeatTime {
  readonly what: string;
  readonly milliseconds: number;
}

/** The demo order with three layers in two molds. */
const ORDER = '1004';
const RUNS = 15;

/** What the heat of one plan costs, in plain Node, median of some runs, the machine warm. */
export function heatTimes(): readonly HeatTime[] {
  const book = demoBook();
  const row = indexBook(book).orders.get(nameKey(ORDER));
  if (row === undefined) throw new Error(`the demo shop has no order ${ORDER}`);
  const mold = { length: 0.1524, width: 0.1016, height: 0.0254, count: 2 };
  const plate = { kind: 'held', setting: 132 } as const;
  const wanted = { target: 103, duration: 3600, interval: 60 };
  const pours = [0, 90, 180].map((time) => ({ time, thickness: 0.003, temperature: 158 }));
  return [
    timed('one stack of three layers, 20 minutes', () => solveLayers({ pours, mold: 103 })),
    timed('one heat-up of two molds, an hour', () =>
      heatUpCourse({ plate, molds: [mold], roomTemperature: 20 }, wanted),
    ),
    timed(`plan of order ${ORDER}, three layers`, () => planned(row)),
    timed(`the same with bands and curves`, () =>
      planInDetail(indexBook(book), row, book.heatTrials, 1),
    ),
  ];

  function planned(order: OrderRow): void {
    planRow(indexBook(book), order);
  }
}

function timed(what: string, run: () => unknown): HeatTime {
  for (let warm = 0; warm < 3; warm += 1) run();
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return { what, milliseconds: median(times) };
}
