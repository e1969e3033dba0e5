/** What the line at the top right knows about the window. */
export interface WindowState {
  /** Label of the add-on run the person started last, while it runs. */
  readonly running?: string | undefined;
  readonly calls: number;
  /** Own changes the server has not taken yet. */
  readonly waiting: number;
  /** Last operation seen, calculated and written to the file. */
  readonly seen: number;
  readonly calculated: number;
  readonly saved: number;
  readonly keeps: 'file' | 'memory';
  /** `gone`: another run of the server answers, under an address of its own. */
  readonly connection: 'open' | 'lost' | 'gone';
}

/** One short sentence on whether everything is worked out and kept. */
export function stateLine(state: WindowState): string {
  if (state.connection === 'lost') return 'Connection lost: changes are not kept. Trying again…';
  if (state.connection === 'gone')
    return 'The workbench was started again: open the address it printed.';
  if (state.running !== undefined) return `Running: ${state.running}…`;
  if (state.calls > 0) return 'Add-on at work…';
  if (state.waiting > 0 || state.calculated < state.seen) return 'Calculating…';
  if (state.keeps === 'memory') return 'Kept in memory only';
  return state.saved < state.seen ? 'Saving…' : 'Saved';
}
