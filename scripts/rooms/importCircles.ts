import type { SourceTree } from './sourceTree.ts';

/** Circles of files that import each other, types counted: the strongly connected parts of the tree, by Tarjan's algorithm. */
export function importCircles(tree: SourceTree): readonly (readonly string[])[] {
  const circles: string[][] = [];
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const stack: string[] = [];
  const visit = (path: string): void => {
    order.set(path, order.size);
    lowest.set(path, order.size - 1);
    stack.push(path);
    for (const { path: target } of tree.get(path)?.imports ?? []) {
      if (!tree.has(target)) continue;
      if (!order.has(target)) visit(target);
      if (stack.includes(target))
        lowest.set(path, Math.min(lowest.get(path) ?? 0, lowest.get(target) ?? 0));
    }
    if (lowest.get(path) !== order.get(path)) return;
    const part = stack.splice(stack.indexOf(path));
    if (part.length > 1) circles.push(part.sort());
  };
  for (const path of tree.keys()) if (!order.has(path)) visit(path);
  return circles;
}
