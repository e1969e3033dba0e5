import { type Node, parse } from 'acorn';

/** Globals of a browser or of Node that the platform does not have. */
const ABSENT = new Set(
  'setTimeout setInterval clearTimeout clearInterval TextEncoder TextDecoder fetch FormData File Blob URL URLSearchParams DOMException atob btoa crypto window navigator performance process structuredClone require module document localStorage'.split(
    ' ',
  ),
);

/** Why the platform would refuse the script: syntax past ES2019 but for `?.` and `??`, or a free use of an absent global. */
export function refusedSyntax(code: string): readonly string[] {
  const refused: string[] = [];
  try {
    const tree = parse(code, { ecmaVersion: 2020, sourceType: 'script' });
    if (holds(tree, isPast2019))
      refused.push('does not parse as ES2019: it has a BigInt or an import()');
    for (const name of freeNames(tree))
      if (ABSENT.has(name)) refused.push(`uses ${name}, which the platform lacks`);
  } catch (error) {
    refused.push(`does not parse as ES2019: ${String(error)}`);
  }
  return refused;
}

/** Identifiers used as values that no declaration anywhere in the file makes; `typeof name` is a safe probe and does not count. */
function freeNames(tree: Node): ReadonlySet<string> {
  const used = new Set<string>();
  const declared = new Set<string>();
  walk(tree, undefined, '', (node, parent, role) => {
    if (node.type !== 'Identifier' || typeof node['name'] !== 'string') return;
    const name = node['name'];
    const isKey =
      role === 'property' && parent?.['computed'] !== true && parent?.type === 'MemberExpression';
    const isLabel = role === 'key' && parent?.['computed'] !== true;
    const isProbe = parent?.type === 'UnaryExpression' && parent['operator'] === 'typeof';
    if (role === 'id' || role === 'params' || role === 'param') declared.add(name);
    else if (!isKey && !isLabel && !isProbe) used.add(name);
  });
  return new Set([...used].filter((name) => !declared.has(name)));
}

/** The rest of what the year 2020 brought. */
function isPast2019(node: Tree): boolean {
  return node.type === 'ImportExpression' || typeof node['bigint'] === 'string';
}

function holds(tree: Node, what: (node: Tree) => boolean): boolean {
  let found = false;
  walk(tree, undefined, '', (node) => {
    found ||= what(node);
  });
  return found;
}

type Tree = Node & { readonly [key: string]: unknown };

function walk(
  node: Node,
  parent: Tree | undefined,
  role: string,
  visit: (node: Tree, parent: Tree | undefined, role: string) => void,
): void {
  const tree = node as Tree; // acorn's nodes are plain objects whose fields depend on their type
  visit(tree, parent, role);
  for (const [key, value] of Object.entries(tree)) {
    const children: readonly unknown[] = Array.isArray(value) ? value : [value];
    for (const child of children) if (isNode(child)) walk(child, tree, key, visit);
  }
}

function isNode(value: unknown): value is Node {
  return (
    typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'
  );
}
