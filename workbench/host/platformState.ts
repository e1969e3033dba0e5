import type { IMutationInfo } from '@univerjs/core';
import type { Box } from './parseA1.ts';
import { sheets } from './univer.ts';

export interface Protection {
  readonly id: number;
  readonly sheet: string;
  /** Absent for a whole sheet. */
  readonly box?: Box;
  readonly description: string;
  readonly warningOnly: boolean;
}

export interface Metadata {
  readonly id: number;
  /** Absent when it belongs to the whole spreadsheet. */
  readonly sheet?: string;
  readonly key: string;
  readonly value: string;
}

/** A chart on a sheet, of columns unless it says lines. Its ranges are columns of one cell width, the first naming the groups. */
export interface Chart {
  readonly id: number;
  /** The sheet it stands on. */
  readonly sheet: string;
  readonly title: string;
  readonly kind?: 'lines';
  /** Rows at the top of each range that name it. */
  readonly headers: number;
  readonly ranges: readonly { readonly sheet: string; readonly box: Box }[];
}

/** What a platform spreadsheet holds and Univer does not. */
export interface PlatformState {
  readonly protections: readonly Protection[];
  readonly metadata: readonly Metadata[];
  readonly charts: readonly Chart[];
  readonly properties: Readonly<Record<string, string>>;
}

export const EMPTY_PLATFORM_STATE: PlatformState = {
  protections: [],
  metadata: [],
  charts: [],
  properties: {},
};

/** Protected ranges and those of charts move with the rows and columns around them, and go when all their cells go. */
export function followLayout(state: PlatformState, mutation: IMutationInfo): PlatformState {
  const { protections, metadata, charts } = state;
  if (protections.length + metadata.length + charts.length === 0) return state;
  if (mutation.id === sheets.RemoveSheetMutation.id) return withoutSheet(state, mutation);
  const axis = AXES[mutation.id];
  if (!axis) return state;
  // The four ids above carry a sheet and a range.
  const { subUnitId, range } = mutation.params as { subUnitId: string; range: Box };
  const moved = <Item extends { readonly sheet: string; readonly box?: Box }>(item: Item) => {
    if (item.sheet !== subUnitId || !item.box) return [item];
    const box = moveBox(item.box, range, axis);
    return box ? [{ ...item, box }] : [];
  };
  return {
    ...state,
    protections: protections.flatMap(moved),
    charts: charts.map((chart) => ({ ...chart, ranges: chart.ranges.flatMap(moved) })),
  };
}

interface Axis {
  readonly start: 'startRow' | 'startColumn';
  readonly end: 'endRow' | 'endColumn';
  readonly change: 'insert' | 'remove';
}

const AXES: Readonly<Record<string, Axis>> = {
  [sheets.InsertRowMutation.id]: { start: 'startRow', end: 'endRow', change: 'insert' },
  [sheets.RemoveRowMutation.id]: { start: 'startRow', end: 'endRow', change: 'remove' },
  [sheets.InsertColMutation.id]: { start: 'startColumn', end: 'endColumn', change: 'insert' },
  [sheets.RemoveColMutation.id]: { start: 'startColumn', end: 'endColumn', change: 'remove' },
};

function moveBox(box: Box, moved: Box, axis: Axis): Box | undefined {
  const first = moved[axis.start];
  const count = moved[axis.end] - first + 1;
  if (axis.change === 'insert') {
    const move = (at: number) => (at >= first ? at + count : at);
    return { ...box, [axis.start]: move(box[axis.start]), [axis.end]: move(box[axis.end]) };
  }
  const before = (at: number) => Math.min(Math.max(at - first, 0), count);
  const start = box[axis.start] - before(box[axis.start]);
  const end = box[axis.end] - before(box[axis.end] + 1);
  return end < start ? undefined : { ...box, [axis.start]: start, [axis.end]: end };
}

function withoutSheet(state: PlatformState, mutation: IMutationInfo): PlatformState {
  // The id says what the parameters are.
  const { subUnitId } = mutation.params as { subUnitId: string };
  return {
    ...state,
    protections: state.protections.filter((item) => item.sheet !== subUnitId),
    metadata: state.metadata.filter((item) => item.sheet !== subUnitId),
    charts: state.charts.filter((item) => item.sheet !== subUnitId),
  };
}
