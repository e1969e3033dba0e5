import { expect, test } from 'vitest';
import { refusedSyntax } from '../../../scripts/build/refusedSyntax.ts';

test.each([
  'var a = { window: 1 }; a.window; var b = { crypto() { return 1; } }; typeof fetch;',
  'var a, b; a?.b; a ?? b;',
  'function f({ x }) { return x ** 2; } try { f({ x: 1 }); } catch { f({}); }',
])('accepts %s', (code) => {
  expect(refusedSyntax(code)).toEqual([]);
});

test.each([
  { code: 'setTimeout(f, 1)', because: 'uses setTimeout, which the platform lacks' },
  { code: 'var a = window.b', because: 'uses window, which the platform lacks' },
  { code: 'var a = { b: crypto }', because: 'uses crypto, which the platform lacks' },
  { code: 'var a = process["env"]', because: 'uses process, which the platform lacks' },
])('refuses $code', ({ code, because }) => {
  expect(refusedSyntax(code)).toEqual([because]);
});

test.each([
  'class A { #x = 1 }',
  'class A { static x = 1 }',
  'a ??= b',
  '10n',
  'import("a")',
  'class A { x = 1 }',
])('refuses %s as past ES2019', (code) => {
  expect(refusedSyntax(code)).toEqual([
    expect.stringMatching(/^does not parse as ES2019: (SyntaxError|it has)/),
  ]);
});
