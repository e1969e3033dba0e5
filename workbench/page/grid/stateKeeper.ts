import { stateLine, type WindowState } from '../stateLine.ts';

export interface StateKeeper {
  now(part: Partial<WindowState>): void;
  state(): WindowState;
  settled(): boolean;
}

/** Keeps the state of a window and shows it in its line. */
export function stateKeeper(
  line: HTMLElement,
  sequence: number,
  keeps: WindowState['keeps'],
): StateKeeper {
  let state: WindowState = {
    calls: 0,
    waiting: 0,
    seen: sequence,
    calculated: sequence,
    saved: sequence,
    keeps,
    connection: 'open',
  };
  return {
    now: (part) => {
      state = { ...state, ...part };
      const text = stateLine(state);
      // Unchanged text would be read out again.
      if (line.textContent !== text) line.textContent = text;
      line.dataset['state'] = state.connection;
    },
    state: () => state,
    settled: () => state.calls === 0 && state.waiting === 0 && state.calculated >= state.seen,
  };
}
