import { describe, expect, test } from 'vitest';
import { startOptions } from '../../../workbench/server/startOptions.ts';

describe('startOptions', () => {
  test('without options opens the demo book on loopback', () => {
    expect(startOptions([])).toEqual({
      book: 'books/demo.xlsx',
      fill: 'demo',
      port: 8321,
      address: '127.0.0.1',
    });
  });

  test('an own book is laid out, never filled', () => {
    expect(startOptions(['--book', 'shop.xlsx', '--port', '9000', '--listen', '0.0.0.0'])).toEqual({
      book: 'shop.xlsx',
      fill: 'layout',
      port: 9000,
      address: '0.0.0.0',
    });
  });

  test.each([
    [['--port', '65536'], 'port must be a whole number from 0 to 65535, got 65536'],
    [['--port', 'soon'], 'port must be a whole number from 0 to 65535, got soon'],
    [['--book', 'shop.ods'], 'book must be an .xlsx file, got shop.ods'],
  ])('refuses %j', (args, message) => {
    expect(() => startOptions(args)).toThrow(new Error(message));
  });

  test('refuses an option it does not know', () => {
    expect(() => startOptions(['--bok', 'shop.xlsx'])).toThrow(/Unknown option '--bok'/);
  });
});
