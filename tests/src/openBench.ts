import { afterAll, beforeAll } from 'vitest';
import { type DemoBook, openDemoBook } from './openDemoBook.ts';

/** One demo book for all tests of a file or part: opened before them, closed after them. Each test says what it adds to it. */
export function openBench(options: Parameters<typeof openDemoBook>[0] = {}): DemoBook {
  let book: DemoBook;
  beforeAll(async () => {
    book = await openDemoBook(options);
  }, 120_000);
  afterAll(() => book.host.close());
  return {
    get host() {
      return book.host;
    },
    get shown() {
      return book.shown;
    },
    call: (...call) => book.call(...call),
    ask: (...question) => book.ask(...question),
  };
}
