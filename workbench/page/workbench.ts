import type { LocalMutation, MenuItem, ProtectedRange, ShownChart } from '../host/Host.ts';
import { OPERATION_IDS } from '../host/operationIds.ts';
import type { ToWindow } from '../server/messageTypes.ts';
import { addOnCalls } from './addOn/addOnCalls.ts';
import { dialogs } from './addOn/dialogs.ts';
import { menuBar } from './addOn/menuBar.ts';
import { showRequests } from './addOn/showRequests.ts';
import { sidebar } from './addOn/sidebar.ts';
import { toast } from './addOn/toast.ts';
import { charts } from './charts/charts.ts';
import type { Connection } from './connection.ts';
import { cellLine } from './grid/cellLine.ts';
import { changeQueue } from './grid/changeQueue.ts';
import type { Grid } from './grid/gridTypes.ts';
import { inBursts } from './grid/inBursts.ts';
import { operations } from './grid/operations.ts';
import { protections } from './grid/protections.ts';
import { startGrid } from './grid/startGrid.ts';
import { stateKeeper } from './grid/stateKeeper.ts';
import { pageElement } from './htmlElement.ts';
import { startAgain, startAgainWhenBack } from './startAgain.ts';

export type Start = Extract<ToWindow, { readonly kind: 'start' }>;

/** The page at work: grid, menus, panels and the server's messages. */
export interface Workbench {
  readonly grid: Grid;
  take(message: Exclude<ToWindow, Start>): void;
  lost(): void;
  /** Runs an add-on function as a menu item does. */
  run(label: string, name: string): Promise<void>;
  /** Whether every change is with the server, calculated, and no add-on run is going on. */
  settled(): boolean;
}

export function startWorkbench(start: Start, connection: Connection): Workbench {
  const { snapshot } = start;
  const state = stateKeeper(pageElement('state'), snapshot.sequence, start.keeps);
  const queue = changeQueue(connection.send, queueMicrotask, snapshot.sequence);
  const calls = addOnCalls(
    (call, name, args) =>
      connection.send({ kind: 'call', call, name, args, selection: grid.selection() }),
    () => state.now({ calls: calls.running() }),
  );
  const grid = startGrid(pageElement('grid'), snapshot, {
    changed: (mutation) => {
      queue.add(mutation);
      state.now({ waiting: queue.waiting() });
    },
    selected: () => cell.look(),
    activated: () => drawn.look(),
  });
  const cell = cellLine(pageElement('cell'), grid, connection);
  const drawn = charts(pageElement('charts'), grid);
  const boxes = dialogs(calls.call, grid.focus);
  const panel = sidebar(pageElement('sidebar'), calls.call, grid.focus);
  const show = showRequests({ boxes, panel, grid, connection });
  const protect = protections(grid.commands, boxes.confirmEdit, grid.target);
  const operation = operations({
    window: start.window,
    grid,
    queue,
    protect,
    charts: drawn.take,
    startAgain,
  });

  function values(list: readonly LocalMutation[]) {
    grid.calculated(
      list.filter(
        (value) => value.id !== OPERATION_IDS.protections && value.id !== OPERATION_IDS.charts,
      ),
    );
    const ranges = list.find((value) => value.id === OPERATION_IDS.protections);
    // The host's contract says what this entry carries.
    if (ranges) protect(ranges.params as readonly ProtectedRange[]);
    const shown = list.find((value) => value.id === OPERATION_IDS.charts);
    // And what this one does.
    if (shown) drawn.take(shown.params as readonly ShownChart[]);
  }

  async function run(label: string, name: string) {
    state.now({ running: label });
    const result = await calls.call(name, []);
    state.now({ running: undefined });
    if (result.kind === 'failure') toast(pageElement('toasts'), label, result.message, 'stay');
  }

  function take(message: Exclude<ToWindow, Start>) {
    switch (message.kind) {
      case 'operation':
        operation(message.operation);
        state.now({ seen: message.operation.sequence });
        return;
      case 'calculated':
        values(message.values);
        state.now({ calculated: message.sequence });
        cell.look();
        drawn.look();
        return;
      case 'applied':
        queue.applied(message.batch);
        state.now({ waiting: queue.waiting() });
        return;
      case 'refused':
        startAgain(`Your last change was not kept: ${message.because}.`);
        return;
      case 'result':
        calls.result(message.call, message.result);
        return;
      case 'show':
        show(message.request);
        return;
      case 'cell':
        cell.tell(message.sheet, message.cell, message.message);
        return;
      case 'saved':
        state.now({ saved: state.state().seen });
        return;
      default:
        console.info(message.text);
    }
  }

  values(snapshot.values);
  state.now({});
  const choose = ({ label, run: name }: MenuItem & { readonly run: string }) =>
    void run(label, name);
  menuBar(pageElement('menus'), start.menus, choose);
  return {
    grid,
    take: inBursts(take, reportError),
    run,
    lost: () => {
      state.now({ connection: 'lost' });
      pageElement('work').inert = true;
      const because = 'The connection was lost for a while. Changes made meanwhile are not kept.';
      startAgainWhenBack(because, () => state.now({ connection: 'gone' }));
    },
    settled: () => state.settled(),
  };
}
