/** What was typed into a form and is not in the book yet, with the token of its entry. */
export interface Draft {
  readonly order: string;
  readonly token: string;
  /** Entry of the row that it replaces. */
  readonly corrects?: string;
  readonly values: Readonly<Record<string, string>>;
}

/** Forms whose typing is kept. */
type DraftOf = 'log' | 'correction' | 'quote';

const KEYS: Readonly<Record<DraftOf, string>> = {
  log: 'poursmith draft',
  correction: 'poursmith correction',
  quote: 'poursmith quote',
};

/** Keeps the draft while the browser tab lives; a browser that forbids it loses only what a reload would lose. */
export function keepDraft(draft: Draft | undefined, of: DraftOf = 'log'): void {
  try {
    if (draft === undefined) sessionStorage.removeItem(KEYS[of]);
    else sessionStorage.setItem(KEYS[of], JSON.stringify(draft));
  } catch {
    // The form itself still holds what was typed.
  }
}

/** The draft that was kept for an order. */
export function keptDraft(order: string, of: DraftOf = 'log'): Draft | undefined {
  try {
    const draft: unknown = JSON.parse(sessionStorage.getItem(KEYS[of]) ?? 'null');
    return isDraft(draft) && draft.order === order ? draft : undefined;
  } catch {
    return undefined;
  }
}

function isDraft(value: unknown): value is Draft {
  if (typeof value !== 'object' || value === null) return false;
  if (!('order' in value) || !('token' in value) || !('values' in value)) return false;
  const { order, token, values } = value;
  if (typeof order !== 'string' || typeof token !== 'string') return false;
  if ('corrects' in value && typeof value.corrects !== 'string') return false;
  if (typeof values !== 'object' || values === null) return false;
  return Object.values(values).every((one) => typeof one === 'string');
}
