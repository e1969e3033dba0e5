import type { Chart } from '../platformState.ts';
import { type ObjectMark, SELF } from '../standIn/protocolTypes.ts';
import { answerMethod, type Methods, type Session, withSelf } from './session.ts';
import type { RangeRef } from './sheetOf.ts';
import { integerArgument, objectArgument, textArgument } from './textArgument.ts';

/** A chart while it is built, or one that stands on a sheet: then it has an id. */
type ChartRef = Omit<Chart, 'id'> & { readonly id?: number };

/** A new builder; the kind of chart is chosen first. */
export function newChart(sheet: string): ObjectMark {
  const ref: ChartRef = { sheet, title: '', headers: 0, ranges: [] };
  return { $object: 'EmbeddedChartBuilder', ref };
}

export const CHART_BUILDER: Methods<GoogleAppsScript.Spreadsheet.EmbeddedChartBuilder, ChartRef> = {
  asColumnChart: answerMethod((_session, ref) => ({ $object: 'EmbeddedColumnChartBuilder', ref })),
  asLineChart: answerMethod((_session, ref) => ({
    $object: 'EmbeddedLineChartBuilder',
    ref: { ...ref, kind: 'lines' },
  })),
};

/** Where a chart stands and how large it is are read and checked; the page shows charts in a strip of their own. */
const SET_UP = {
  setTitle: answerMethod<ChartRef>((_session, ref, args) =>
    withSelf({ ...ref, title: textArgument(args, 0) }, SELF),
  ),
  setNumHeaders: answerMethod<ChartRef>((_session, ref, args) =>
    withSelf({ ...ref, headers: integerArgument(args, 0) }, SELF),
  ),
  addRange: answerMethod<ChartRef>((_session, ref, args) => {
    const { sheet, box } = objectArgument<RangeRef>(args, 0, 'Range');
    return withSelf({ ...ref, ranges: [...ref.ranges, { sheet, box }] }, SELF);
  }),
  setOption: answerMethod<ChartRef>((_session, ref, args) => {
    const name = textArgument(args, 0);
    if (name !== 'width' && name !== 'height')
      throw new Error(`the chart option ${name} is not part of the workbench's stand-in`);
    integerArgument(args, 1);
    return withSelf(ref, SELF);
  }),
  setPosition: answerMethod<ChartRef>((_session, ref, args) => {
    if (integerArgument(args, 0) < 1 || integerArgument(args, 1) < 1)
      throw new Error('The chart must stand at a row and a column of the sheet');
    integerArgument(args, 2);
    integerArgument(args, 3);
    return withSelf(ref, SELF);
  }),
  build: answerMethod<ChartRef>((_session, ref) => ({ $object: 'EmbeddedChart', ref })),
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
export const EMBEDDED_CHART: Methods<GoogleAppsScript.Spreadsheet.EmbeddedChart, ChartRef> = {};

export function insertChart(session: Session, sheet: string, args: readonly unknown[]): void {
  const chart = objectArgument<ChartRef>(args, 0, 'EmbeddedChart');
  const { charts } = session.platform.state();
  const id = Math.max(0, ...charts.map((one) => one.id)) + 1;
  session.platform.change({ charts: [...charts, { ...chart, sheet, id }] });
}

export function chartsOf(session: Session, sheet: string): readonly ObjectMark[] {
  const { charts } = session.platform.state();
  return charts
    .filter((one) => one.sheet === sheet)
    .map((ref) => ({ $object: 'EmbeddedChart', ref }));
}

export function removeChart(session: Session, args: readonly unknown[]): void {
  const { id } = objectArgument<ChartRef>(args, 0, 'EmbeddedChart');
  const { charts } = session.platform.state();
  if (!charts.some((one) => one.id === id)) throw new Error('The chart was removed');
  session.platform.change({ charts: charts.filter((one) => one.id !== id) });
}
