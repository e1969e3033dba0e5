/** How long a second person waits for the first to finish writing [ms]. */
const PATIENCE = 20_000;

/**
 * Runs `work` while nobody else writes through the add-on; what it wrote is flushed before the lock goes.
 * @throws Error with one sentence when the lock cannot be had
 */
export function withDocumentLock<Answer>(work: () => Answer): Answer {
  const lock: GoogleAppsScript.Lock.Lock | null = LockService.getDocumentLock(); // null outside a document, whatever the types say
  if (lock === null) throw new Error('This only works inside a spreadsheet.');
  if (!lock.tryLock(PATIENCE))
    throw new Error(
      'Somebody else is writing to this workbook just now. Nothing was changed: try again in a moment.',
    );
  try {
    const answer = work();
    SpreadsheetApp.flush();
    return answer;
  } finally {
    lock.releaseLock();
  }
}
