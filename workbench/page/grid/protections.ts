import {
  CustomCommandExecutionError,
  type ICommandInfo,
  type ICommandService,
} from '@univerjs/core';
import {
  ClearSelectionAllCommand,
  ClearSelectionContentCommand,
  DeleteRangeMoveLeftCommand,
  DeleteRangeMoveUpCommand,
  SetRangeValuesCommand,
} from '@univerjs/sheets';
import type { ProtectedRange } from '../../host/Host.ts';
import { type Box, formatA1 } from '../../host/parseA1.ts';

/** Commands by which a person changes what cells hold. */
const EDITS: readonly string[] = [
  SetRangeValuesCommand.id,
  ClearSelectionContentCommand.id,
  ClearSelectionAllCommand.id,
  DeleteRangeMoveLeftCommand.id,
  DeleteRangeMoveUpCommand.id,
];

/**
 * Asks before an edit inside a range protected with a warning, as the platform does.
 *
 * @param ask - resolves with true when the person wants the edit
 * @param selected - sheet id and cells that a command without a range of its own means
 * @returns takes the list of protected ranges
 */
export function protections(
  commands: ICommandService,
  ask: (description: string, range: string) => Promise<boolean>,
  selected: () => { readonly sheet: string; readonly box: Box },
): (ranges: readonly ProtectedRange[]) => void {
  let ranges: readonly ProtectedRange[] = [];
  let agreed: object | undefined;
  commands.beforeCommandExecuted((info, options) => {
    if (!EDITS.includes(info.id) || options?.fromCollab) return;
    const params = info.params ?? {};
    if (params === agreed) return;
    const target = targetOf(info, selected());
    const hit = ranges.find((range) => range.warningOnly && covers(range, target));
    if (!hit) return;
    void ask(hit.description, formatA1(target.box)).then((yes) => {
      if (!yes) return;
      agreed = params;
      void commands.executeCommand(info.id, params).finally(() => {
        agreed = undefined;
      });
    });
    throw new CustomCommandExecutionError('waits for an answer');
  });
  return (list) => {
    ranges = list;
  };
}

interface Target {
  readonly sheet: string;
  readonly box: Box;
}

function targetOf(info: Readonly<ICommandInfo>, selected: Target): Target {
  // The commands above share these optional parameters.
  const params = (info.params ?? {}) as { subUnitId?: string; range?: Box; ranges?: Box[] };
  return {
    sheet: params.subUnitId ?? selected.sheet,
    box: params.range ?? params.ranges?.[0] ?? selected.box,
  };
}

function covers(range: ProtectedRange, target: Target): boolean {
  if (range.sheet !== target.sheet) return false;
  const { box } = range;
  return (
    !box ||
    (box.startRow <= target.box.endRow &&
      box.endRow >= target.box.startRow &&
      box.startColumn <= target.box.endColumn &&
      box.endColumn >= target.box.startColumn)
  );
}
