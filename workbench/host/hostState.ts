import type { IMutationInfo } from '@univerjs/core';
import type { Engine } from './engine.ts';
import type { FunctionCalls } from './functionCalls.ts';
import type { HostEvent, Operation } from './Host.ts';
import { OPERATION_IDS } from './operationIds.ts';
import { EMPTY_PLATFORM_STATE, followLayout, type PlatformState } from './platformState.ts';
import { sheets } from './univer.ts';

/** The workbook with its sequence of operations, and the calculation that follows each. */
export interface HostState {
  readonly engine: Engine;
  sequence(): number;
  /** Sequence number of the last change that moved rows, columns or sheets. */
  layoutSequence(): number;
  platformState(): PlatformState;
  change(part: Partial<PlatformState>): void;
  settled(): Promise<void>;
  /** While held, formulas are calculated only when somebody waits for them. */
  hold(): () => void;
  emit(event: HostEvent): void;
  listen(listener: (event: HostEvent) => void): () => void;
  onChange(listener: () => void): void;
}

const LAYOUT: readonly string[] = [
  sheets.InsertRowMutation.id,
  sheets.RemoveRowMutation.id,
  sheets.InsertColMutation.id,
  sheets.RemoveColMutation.id,
  sheets.MoveRowsMutation.id,
  sheets.MoveColsMutation.id,
  sheets.InsertSheetMutation.id,
  sheets.RemoveSheetMutation.id,
];

/** Changes that no formula can see. */
const SILENT: readonly string[] = [
  sheets.SetWorksheetColWidthMutation.id,
  sheets.SetWorksheetRowHeightMutation.id,
  sheets.SetWorksheetHideMutation.id,
  sheets.SetColHiddenMutation.id,
  sheets.SetColVisibleMutation.id,
  sheets.SetFrozenMutation.id,
  sheets.SetTabColorMutation.id,
  sheets.ToggleGridlinesMutation.id,
  sheets.AddWorksheetMergeMutation.id,
  sheets.RemoveWorksheetMergeMutation.id,
  OPERATION_IDS.protections,
  OPERATION_IDS.charts,
];

export function hostState(
  engine: Engine,
  functions: FunctionCalls,
  start: PlatformState = EMPTY_PLATFORM_STATE,
): HostState {
  const listeners = new Set<(event: HostEvent) => void>();
  const changed: (() => void)[] = [];
  let [sequence, layout, platformState, holds] = [0, 0, start, 0];
  let dirty = true;
  // Silent changes since the last calculation: windows wait to hear that nothing is left to calculate.
  let untold = false;
  let hadFormulas = true;
  let running: Promise<void> | undefined;

  const emit = (event: HostEvent) => {
    for (const listener of listeners) listener(event);
  };

  function record(mutation: IMutationInfo, origin: string) {
    sequence += 1;
    if (LAYOUT.includes(mutation.id)) layout = sequence;
    // A copy, because Univer goes on using the parameters.
    const params: unknown = JSON.parse(JSON.stringify(mutation.params));
    const operation: Operation = { sequence, id: mutation.id, params, origin };
    emit({ kind: 'operation', operation });
    for (const listener of changed) listener();
    if (SILENT.includes(mutation.id)) untold = true;
    else dirty = true;
    schedule();
  }

  function change(part: Partial<PlatformState>) {
    platformState = { ...platformState, ...part };
    if (part.protections)
      record({ id: OPERATION_IDS.protections, params: [...part.protections] }, 'host');
    if (part.charts) record({ id: OPERATION_IDS.charts, params: [...part.charts] }, 'host');
    if (!part.protections && !part.charts) for (const listener of changed) listener();
  }

  function schedule() {
    if (holds === 0) setImmediate(() => void settled());
  }

  async function settled(): Promise<void> {
    while (dirty || running) {
      running ??= calculate().finally(() => {
        running = undefined;
      });
      await running;
    }
    if (!untold) return;
    untold = false;
    emit({ kind: 'calculated', sequence, values: [] });
  }

  async function calculate() {
    while (dirty) {
      dirty = false;
      const at = sequence;
      // Setting up a workbook changes and reads it many times before its first formula.
      const formulas = engine.hasFormulas();
      if (formulas || hadFormulas) {
        functions.begin();
        await engine.calculate();
      }
      hadFormulas = formulas;
      if (at === sequence) untold = false;
      emit({ kind: 'calculated', sequence: at, values: engine.results() });
    }
  }

  engine.onMutation((mutation, origin) => {
    record(mutation, origin);
    const moved = followLayout(platformState, mutation);
    if (moved !== platformState) change(moved);
  });

  return {
    engine,
    sequence: () => sequence,
    layoutSequence: () => layout,
    platformState: () => platformState,
    change,
    settled,
    hold: () => {
      holds += 1;
      return () => {
        holds -= 1;
        if (dirty || untold) schedule();
      };
    },
    emit,
    listen: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    onChange: (listener) => changed.push(listener),
  };
}
