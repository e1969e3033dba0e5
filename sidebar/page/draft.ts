/** What was typed into the log form and is not in the log yet, with the token of its entry. */
export interface Draft {
  readonly order: string;
  readonly token: string;
  readonly values: Readonly<Record<string, string>>;
}

const KEY = 'poursmith draft';

/** Keeps the draft while the browser tab lives; a browser that forbids it loses only what a reload would lose. */
export function keepDraft(draft: Draft | undefined): void {
  try {
    if (draft === undefined) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, JSON.stringify(draft));
  } catch {
    // The form itself still holds what was typed.
  }
}

/** The draft that was kept for an order. */
export function keptDraft(order: string): Draft | undefined {
  try {
    const draft: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
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
  if (typeof values !== 'object' || values === null) return false;
  return Object.values(values).every((one) => typeof one === 'string');
}
