import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { beforeAll, describe, expect, test } from 'vitest';
import { refusedSyntax } from '../../../scripts/build/refusedSyntax.ts';
import { ALL_FUNCTIONS } from '../../../shared/functions/allFunctions.ts';

let code = '';

beforeAll(() => {
  code = readFileSync('dist/Code.js', 'utf8');
});

/** A context with nothing in it but the language, as the platform has it; any service touched at load throws. */
function load(): Readonly<Record<string, unknown>> {
  const context = createContext({});
  runInContext(code, context);
  return context;
}

/** A list of an example as the range it stands for. */
function asColumn(one: unknown): unknown {
  return Array.isArray(one) ? one.map((cell: unknown) => [cell]) : one;
}

describe('dist/Code.js', () => {
  test('is ES2019, uses no global that the platform lacks, and is small', () => {
    expect(refusedSyntax(code)).toEqual([]);
    expect(Buffer.byteLength(code)).toBeLessThanOrEqual(560_000);
  });

  test('holds no drawing code: pages draw', () => {
    expect(code).not.toMatch(/viewBox|stroke-dasharray|text-anchor/);
  });

  test('defines one global beside its top-level functions', () => {
    const globals = Object.keys(load());
    const functions = [...code.matchAll(/^function (\w+)\(/gm)].map(([, name]) => name);
    expect(globals.filter((name) => !functions.includes(name))).toEqual(['Poursmith_']);
    for (const name of functions) expect(name).not.toMatch(/_$/);
  });

  test('touches no service at load, not even where all services throw', () => {
    const trap = new Proxy(
      {},
      {
        get: (_, name) => {
          throw new Error(`touched ${String(name)}`);
        },
      },
    );
    const services = [
      'SpreadsheetApp',
      'HtmlService',
      'LockService',
      'PropertiesService',
      'Utilities',
      'Session',
      'ScriptApp',
      'CacheService',
      'Logger',
      'console',
    ];
    const context = createContext(Object.fromEntries(services.map((name) => [name, trap])));
    expect(() => runInContext(code, context)).not.toThrow();
  });

  test.each(ALL_FUNCTIONS.map((declared) => ({ name: declared.name, declared })))(
    '$name answers and refuses from an empty context',
    ({ name, declared }) => {
      const call = load()[name] as (...args: readonly unknown[]) => unknown; // the stub of that name
      expect(call).toBeTypeOf('function');
      if (declared.kind === 'table') return;
      const example = declared.examples[0];
      const answer = call(...(example?.args ?? []).map(asColumn));
      const shown = JSON.parse(JSON.stringify(Array.isArray(answer) ? answer.flat() : [answer]));
      const expected = [example?.result ?? []].flat(2);
      // A spilled table has its headings first.
      const cells = shown.slice(shown.length - expected.length);
      for (const [index, value] of expected.entries()) {
        if (typeof value === 'number')
          expect(cells[index]).toBeNear(value, { relative: example?.within ?? 0 });
        else expect(cells[index]).toBe(value);
      }
      expect(String(call('#N/A'))).toMatch(/must be (free of errors|one of)/);
    },
  );

  test('every sheet function carries the comment that the editor’s helper reads', () => {
    for (const { name, params } of ALL_FUNCTIONS) {
      const comment =
        code
          .slice(0, code.indexOf(`function ${name}(`))
          .match(/\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*$/)?.[0] ?? '';
      expect(comment).toContain('@customfunction');
      expect(comment.match(/@param/g)).toHaveLength(Object.keys(params).length + 1);
    }
  });
});

test('the manifest asks for the two narrow permissions only', () => {
  expect(JSON.parse(readFileSync('dist/appsscript.json', 'utf8'))).toMatchObject({
    runtimeVersion: 'V8',
    oauthScopes: [
      'https://www.googleapis.com/auth/spreadsheets.currentonly',
      'https://www.googleapis.com/auth/script.container.ui',
    ],
  });
});
