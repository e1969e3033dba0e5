import type { ShownChart } from '../../host/Host.ts';
import type { Grid } from '../grid/gridTypes.ts';
import { type ChartData, chartPicture } from './chartPicture.ts';

export interface Charts {
  /** Takes the list of charts, replacing the last. */
  take(list: readonly ShownChart[]): void;
  /** Draws them again where their cells or the sheet in front changed. */
  look(): void;
}

/** The strip below the grid that draws the charts of the sheet in front from their cells. */
export function charts(place: HTMLElement, grid: Pick<Grid, 'values' | 'target'>): Charts {
  let list: readonly ShownChart[] = [];
  let drawn = '';

  function look() {
    // A workbook without charts never looks at its cells.
    const front = list.length === 0 ? '' : grid.target().sheet;
    const shown = list.filter(({ sheet }) => sheet === front).map((chart) => dataOf(chart, grid));
    const text = JSON.stringify(shown);
    if (text === drawn) return;
    drawn = text;
    place.hidden = shown.length === 0;
    place.replaceChildren(...shown.map(chartPicture));
  }

  return {
    look,
    take: (charts) => {
      list = charts;
      look();
    },
  };
}

/** What a chart shows: its first range names the groups, each further one is a series. */
function dataOf(
  { title, kind, headers, ranges }: ShownChart,
  grid: Pick<Grid, 'values'>,
): ChartData {
  const columns = ranges.map(({ sheet, box }) =>
    grid.values(sheet, box).map((row) => row[0] ?? ''),
  );
  const [names = [], ...rest] = columns;
  return {
    title,
    ...(kind === undefined ? {} : { kind }),
    groups: names.slice(headers).map(String),
    series: rest.map((cells) => ({
      name: cells.slice(0, headers).join(' '),
      values: cells.slice(headers).map((cell) => (typeof cell === 'number' ? cell : undefined)),
    })),
  };
}
