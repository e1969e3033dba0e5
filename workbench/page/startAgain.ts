const KEY = 'why-started-again';

/** Reloads the window and tells the person why when it is back. */
export function startAgain(because: string): void {
  sessionStorage.setItem(KEY, because);
  location.reload();
}

/** Why this window was reloaded; once. */
export function whyStartedAgain(): string | undefined {
  const because = sessionStorage.getItem(KEY) ?? undefined;
  sessionStorage.removeItem(KEY);
  return because;
}

/** Time between two tries to reach the server again [ms]. */
const RETRY = 1_500;

/**
 * Reloads the window once its server answers again.
 *
 * @param gone - another run of the server answers, which does not know this window's token
 */
export function startAgainWhenBack(because: string, gone: () => void): void {
  const attempt = () =>
    fetch(location.href).then(
      (response) => {
        if (response.ok) startAgain(because);
        else gone();
      },
      () => setTimeout(attempt, RETRY),
    );
  setTimeout(attempt, RETRY);
}
