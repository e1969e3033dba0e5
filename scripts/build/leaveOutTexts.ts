import { readFile } from 'node:fs/promises';
import { type Node, parse } from 'acorn';
import { type Plugin, transform } from 'esbuild';

/** Texts that the manual and the editor's helper need and a running cell does not, by the files they stand in. */
const TEXTS = [
  {
    files:
      /shared[\\/]book[\\/](?:tables[\\/].*|settings[\\/](?:settings|moneySettings|daySettings))\.ts$/,
    keys: new Set(['about', 'growth']),
  },
  {
    files: /shared[\\/]functions[\\/].*\.ts$/,
    keys: new Set(['about', 'family', 'notes', 'examples']),
  },
  { files: /shared[\\/]material[\\/]defaults\.ts$/, keys: new Set(['evidence']) },
];

/** Leaves those texts out of the bundle: every sheet-function call loads all of it. */
export const leaveOutTexts: Plugin = {
  name: 'leave out texts',
  setup(build) {
    for (const { files, keys } of TEXTS)
      build.onLoad({ filter: files }, async ({ path }) => {
        const { code } = await transform(await readFile(path, 'utf8'), {
          loader: 'ts',
          target: 'es2019',
        });
        return { contents: withoutProperties(code, keys), loader: 'js' };
      });
  },
};

/** The code with every property of these names removed from its object literals. */
export function withoutProperties(code: string, keys: ReadonlySet<string>): string {
  const spans: Span[] = [];
  collect(parse(code, { ecmaVersion: 2019, sourceType: 'module' }), keys, spans);
  let text = '';
  let end = 0;
  for (const span of spans) {
    text += code.slice(end, span.start);
    end = span.end;
  }
  return text + code.slice(end);
}

interface Span {
  readonly start: number;
  readonly end: number;
}

type Tree = Node & { readonly [key: string]: unknown };

function collect(node: Node, keys: ReadonlySet<string>, spans: Span[]): void {
  const tree = node as Tree; // acorn's nodes are plain objects whose fields depend on their type
  for (const value of Object.values(tree)) {
    const children: readonly unknown[] = Array.isArray(value) ? value : [value];
    children.forEach((child, index) => {
      if (!isNode(child)) return;
      if (tree.type === 'ObjectExpression' && isNamed(child, keys)) {
        const next: unknown = children[index + 1];
        spans.push({ start: child.start, end: isNode(next) ? next.start : child.end });
      } else collect(child, keys, spans);
    });
  }
}

function isNamed(node: Node, keys: ReadonlySet<string>): boolean {
  const { key } = node as Tree; // as above
  return node.type === 'Property' && isNode(key) && 'name' in key && keys.has(String(key.name));
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value && 'start' in value;
}
