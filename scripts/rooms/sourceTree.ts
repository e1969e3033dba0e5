import { posix } from 'node:path';
import { parseSync } from 'oxc-parser';

/** One file with what it imports and exports, type imports included. */
interface SourceFile {
  readonly path: string;
  readonly lines: number;
  /** Paths of the tree that it imports, with the line each import starts on. */
  readonly imports: readonly { readonly path: string; readonly line: number }[];
  readonly packages: readonly { readonly name: string; readonly line: number }[];
  readonly exports: readonly string[];
}

/** Files by their paths. */
export type SourceTree = ReadonlyMap<string, SourceFile>;

/** The tree of some texts by their paths from the root. @throws Error on a text that does not parse */
export function sourceTree(texts: Readonly<Record<string, string>>): SourceTree {
  return new Map(Object.entries(texts).map(([path, text]) => [path, sourceFile(path, text)]));
}

function sourceFile(path: string, text: string): SourceFile {
  const { module, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} does not parse: ${errors[0]?.message}`);
  const lineOf = (start: number) => text.slice(0, start).split('\n').length;
  const requests = [
    ...module.staticImports.map(({ moduleRequest, start }) => ({
      value: moduleRequest.value,
      start,
    })),
    ...module.staticExports.flatMap(({ entries, start }) =>
      entries.flatMap(({ moduleRequest }) =>
        moduleRequest === null ? [] : [{ value: moduleRequest.value, start }],
      ),
    ),
  ];
  const named = module.staticExports.flatMap(({ entries }) =>
    entries.flatMap(({ exportName, moduleRequest }) =>
      moduleRequest === null && exportName.name !== null ? [exportName.name] : [],
    ),
  );
  return {
    path,
    lines: text.split('\n').length - 1,
    imports: requests
      .filter(({ value }) => value.startsWith('.'))
      .map(({ value, start }) => ({
        path: posix.join(posix.dirname(path), value),
        line: lineOf(start),
      })),
    packages: requests
      .filter(({ value }) => !value.startsWith('.'))
      .map(({ value, start }) => ({ name: value, line: lineOf(start) })),
    exports: [...new Set(named)],
  };
}
