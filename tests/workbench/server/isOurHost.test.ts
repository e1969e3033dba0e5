import { describe, expect, test } from 'vitest';
import { isLoopback, isOurHost } from '../../../workbench/server/isOurHost.ts';

const LOCAL = { address: '127.0.0.1', port: 8321, token: 'secret' };
const OPEN = { ...LOCAL, address: '0.0.0.0' };

describe('isOurHost', () => {
  test.each(['127.0.0.1:8321', 'localhost:8321', '[::1]:8321'])('takes %s', (host) => {
    expect(isOurHost(host, LOCAL)).toBe(true);
  });

  test.each([
    undefined,
    '',
    'evil.example:8321',
    'localhost.evil.example:8321',
    '127.0.0.1.evil.example:8321',
    '127.0.0.1',
    '127.0.0.1:80',
    '192.168.1.20:8321',
    'localhost:8321:8321',
  ])('refuses %s on loopback', (host) => {
    expect(isOurHost(host, LOCAL)).toBe(false);
  });

  test('beyond loopback takes any plain address, and still no name', () => {
    expect(isOurHost('192.168.1.20:8321', OPEN)).toBe(true);
    expect(isOurHost('[fe80::1]:8321', OPEN)).toBe(true);
    expect(isOurHost('evil.example:8321', OPEN)).toBe(false);
  });
});

describe('isLoopback', () => {
  test.each<[string, boolean]>([
    ['127.0.0.1', true],
    ['127.8.8.8', true],
    ['::1', true],
    ['localhost', true],
    ['0.0.0.0', false],
    ['127.0.0.1.evil.example', false],
    ['192.168.1.20', false],
  ])('%s: %s', (address, expected) => {
    expect(isLoopback(address)).toBe(expected);
  });
});
