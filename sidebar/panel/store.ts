import { FIRST_STATE, type PageState } from './pageState.ts';

/** Holds the state; every change is drawn at once, except those that only follow what was typed. */
export interface Store {
  readonly get: () => PageState;
  readonly set: (change: Partial<PageState>) => void;
  /** Changes the state without drawing, so that a field being typed into is left alone. */
  readonly follow: (change: Partial<PageState>) => void;
}

export function openStore(draw: (store: Store) => void): Store {
  let state = FIRST_STATE;
  const store: Store = {
    get: () => state,
    follow: (change) => {
      state = { ...state, ...change };
    },
    set: (change) => {
      state = { ...state, ...change };
      draw(store);
    },
  };
  return store;
}
