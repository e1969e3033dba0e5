import type { RunningTimer } from '../../shared/day/timers/timerTypes.ts';
import type { PlanResult } from '../../shared/plan/planTypes.ts';
import { type View, type ViewOf, viewOf } from './view.ts';

interface Notice {
  readonly kind: 'problem' | 'done';
  readonly texts: readonly string[];
}

/** The order that was read, whatever is looked at meanwhile. */
export interface OrderOnShow {
  readonly plan: PlanResult;
  /** The chosen clock time of the first pour, `09:30`; "" takes the row's own. */
  readonly firstPour: string;
  /** The run sheet that was made last; undefined before. */
  readonly sheet: RunSheetMade | undefined;
}

interface RunSheetMade {
  readonly runId: string;
  /** The plan that it was made from: only that one may be printed under the run's id. */
  readonly of: PlanResult;
}

/** Views that are taken up again as they were left. */
type Kept = 'day' | 'quality' | 'stock';

const KEPT: readonly View['kind'][] = ['day', 'quality', 'stock'] satisfies readonly Kept[];

/** What is on show, and what outlives a change of the view. */
export interface PageState {
  readonly view: View;
  /** What the page waits for; "" when it waits for nothing. */
  readonly busy: string;
  readonly notice: Notice | undefined;
  readonly onShow: OrderOnShow | undefined;
  /** Initials for the journal of measured figures and for closing a month. */
  readonly who: string;
  /** Those that run; undefined where the workbook did not tell. */
  readonly timers: readonly RunningTimer[] | undefined;
  /** Views that were left, the last of each kind that is kept. */
  readonly left: readonly View[];
}

export const FIRST_STATE: PageState = {
  view: { kind: 'plan' },
  busy: '',
  notice: undefined,
  onShow: undefined,
  who: '',
  timers: [],
  left: [],
};

/** The state after a change; a view that gives way to one of another kind is kept where its choices are taken up again. */
export function changedState(state: PageState, change: Partial<PageState>): PageState {
  const { view, left } = state;
  const gaveWay = change.view !== undefined && change.view.kind !== view.kind;
  if (!gaveWay || !KEPT.includes(view.kind)) return { ...state, ...change };
  const others = left.filter(({ kind }) => kind !== view.kind);
  return { ...state, ...change, left: [...others, view] };
}

/** The view of a kind as it stands or was left; undefined before it was opened. */
export function lastView<Kind extends Kept>(
  { view, left }: PageState,
  kind: Kind,
): ViewOf<Kind> | undefined {
  return (
    viewOf(view, kind) ??
    viewOf(
      left.find((one) => one.kind === kind),
      kind,
    )
  );
}
