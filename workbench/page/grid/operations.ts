import type { Operation, ProtectedRange, ShownChart } from '../../host/Host.ts';
import { OPERATION_IDS } from '../../host/operationIds.ts';
import type { ChangeQueue } from './changeQueue.ts';
import type { Grid } from './gridTypes.ts';

/** Changes that cannot be made twice: they move what the cells around them hold. */
const MOVES = /mutation\.(insert|remove|delete|move|reorder|copy|add)/;

/**
 * Takes the operations of the host in their order.
 *
 * A change of this window is already on the page. When another came in between, the host made them in its own order,
 * so that this window's is made again on top; one that cannot be made twice asks for a fresh start.
 */
export function operations(parts: {
  readonly window: string;
  readonly grid: Pick<Grid, 'take'>;
  readonly queue: ChangeQueue;
  readonly protect: (ranges: readonly ProtectedRange[]) => void;
  readonly charts: (list: readonly ShownChart[]) => void;
  readonly startAgain: (because: string) => void;
}): (operation: Operation) => void {
  const { grid, queue } = parts;
  let crossed = false;
  return (operation) => {
    const own = operation.origin === parts.window;
    queue.saw(operation.sequence, own);
    if (operation.id === OPERATION_IDS.protections) {
      // The host's contract says what this operation carries.
      parts.protect(operation.params as readonly ProtectedRange[]);
      return;
    }
    if (operation.id === OPERATION_IDS.charts) {
      // The host's contract says what this operation carries.
      parts.charts(operation.params as readonly ShownChart[]);
      return;
    }
    if (!own) {
      crossed = queue.waiting() > 0;
      grid.take(operation);
      return;
    }
    if (!crossed) return;
    if (MOVES.test(operation.id)) {
      parts.startAgain(
        'Two windows moved rows, columns or sheets at the same time. Nothing was lost.',
      );
      return;
    }
    grid.take(operation);
  };
}
