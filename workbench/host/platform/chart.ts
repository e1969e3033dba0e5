import type { Chart } from '../extras.ts';
import { type ObjectMark, SELF } from '../standIn/protocolTypes.ts';
import { pointed, text, whole } from './optionalText.ts';
import { answer, type Methods, type Session, withSelf } from './session.ts';
import type { RangeRef } from './sheetOf.ts';

/** A chart while it is built, or one that stands on a sheet: then it has an id. */
type ChartRef = Omit<Chart, 'id'> & { readonly id?: number };

/** A new builder; the kind of chart is chosen first. */
export function newChart(sheet: string): ObjectMark {
  const ref: ChartRef = { sheet, title: '', headers: 0, ranges: [] };
  return { $object: 'EmbeddedChartBuilder', ref };
}

export const CHART_BUILDER: Methods<GoogleAppsScript.Spreadsheet.EmbeddedChartBuilder, ChartRef> = {
  asColumnChart: answer((_session, ref) => ({ $object: 'EmbeddedColumnChartBuilder', ref })),
  asLineChart: answer((_session, ref) => ({
    $object: 'EmbeddedLineChartBuilder',
    ref: { ...ref, kind: 'lines' },
  })),
};

/** Where a chart stands and how large it is are read and checked; the page shows charts in a strip of their own. */
const SET_UP = {
  setTitle: answer<ChartRef>((_session, ref, args) =>
    withSelf({ ...ref, title: text(args, 0) }, SELF),
  ),
  setNumHeaders: answer<ChartRef>((_session, ref, args) =>
    withSelf({ ...ref, headers: whole(args, 0) }, SELF),
  ),
  addRange: answer<ChartRef>((_session, ref, args) => {
    const { sheet, box } = pointed<RangeRef>(args, 0, 'Range');
    return withSelf({ ...ref, ranges: [...ref.ranges, { sheet, box }] }, SELF);
  }),
  setOption: answer<ChartRef>((_session, ref, args) => {
    const name = text(args, 0);
    if (name !== 'width' && name !== 'height')
      throw new Error(`the chart option ${name} is not part of the workbench's stand-in`);
    whole(args, 1);
    return withSelf(ref, SELF);
  }),
  setPosition: answer<ChartRef>((_session, ref, args) => {
    if (whole(args, 0) < 1 || whole(args, 1) < 1)
      throw new Error('The chart must stand at a row and a column of the sheet');
    whole(args, 2);
    whole(args, 3);
    return withSelf(ref, SELF);
  }),
  build: answer<ChartRef>((_session, ref) => ({ $object: 'EmbeddedChart', ref })),
};

export const COLUMN_CHART_BUILDER: Methods<
  GoogleAppsScript.Spreadsheet.EmbeddedColumnChartBuilder,
  ChartRef
> = SET_UP;

export const LINE_CHART_BUILDER: Methods<
  GoogleAppsScript.Spreadsheet.EmbeddedLineChartBuilder,
  ChartRef
> = SET_UP;

/** Charts are handed around whole; nothing is asked of them. */
export const CHART: Methods<GoogleAppsScript.Spreadsheet.EmbeddedChart, ChartRef> = {};

export function insertChart(session: Session, sheet: string, args: readonly unknown[]): void {
  const chart = pointed<ChartRef>(args, 0, 'EmbeddedChart');
  const { charts } = session.platform.extras();
  const id = Math.max(0, ...charts.map((one) => one.id)) + 1;
  session.platform.change({ charts: [...charts, { ...chart, sheet, id }] });
}

export function chartsOf(session: Session, sheet: string): readonly ObjectMark[] {
  const { charts } = session.platform.extras();
  return charts
    .filter((one) => one.sheet === sheet)
    .map((ref) => ({ $object: 'EmbeddedChart', ref }));
}

export function removeChart(session: Session, args: readonly unknown[]): void {
  const { id } = pointed<ChartRef>(args, 0, 'EmbeddedChart');
  const { charts } = session.platform.extras();
  if (!charts.some((one) => one.id === id)) throw new Error('The chart was removed');
  session.platform.change({ charts: charts.filter((one) => one.id !== id) });
}
