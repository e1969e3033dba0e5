import { changedState, FIRST_STATE, type PageState } from './pageState.ts';
import { type View, type ViewOf, viewOf } from './view.ts';

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
      state = changedState(state, change);
    },
    set: (change) => {
      store.follow(change);
      draw(store);
    },
  };
  return store;
}

/** The view on show, where it is of that kind. */
export function shown<Kind extends View['kind']>(
  store: Store,
  kind: Kind,
): ViewOf<Kind> | undefined {
  return viewOf(store.get().view, kind);
}
