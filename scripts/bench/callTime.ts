import { createContext, runInContext } from 'node:vm';
import type { RowFunction, SpillFunction } from '../../shared/functions/sheetFunctionTypes.ts';
import { median } from './loadTimes.ts';

export interface CallTime {
  readonly name: string;
  readonly milliseconds: number;
  readonly rowsPerSecond: number;
}

/**
 * Time of one call of a built sheet function over a column of rows, every argument of its first example a range.
 * Numbers are spread by up to 1 % so that no two rows are alike.
 */
export function callTime(code: string, declared: RowFunction, rows: number): CallTime {
  const context = createContext({});
  runInContext(code, context);
  const args = declared.examples[0]?.args ?? [];
  const cells = args.slice(0, Object.keys(declared.params).length).map((value, index) => {
    const isWhole =
      Object.values(declared.params)[index]?.kind === 'number' && Number.isInteger(value);
    return Array.from({ length: rows }, (_, row) => [
      typeof value === 'number' && !isWhole ? value * (1 - (row % 100) / 10_000) : value,
    ]);
  });
  const units = args[cells.length] ?? 'US';
  context['call'] = { cells, units };
  const start = performance.now();
  const answer: unknown = runInContext(`${declared.name}(...call.cells, call.units)`, context);
  const milliseconds = performance.now() - start;
  const count: unknown = runInContext(
    '(answer) => answer.filter((row) => typeof row[0] === "number" || row[0] !== "").length',
    context,
  )(answer);
  if (count !== rows) throw new Error(`${declared.name} answered ${String(count)} of ${rows} rows`);
  return { name: declared.name, milliseconds, rowsPerSecond: (rows / milliseconds) * 1000 };
}

/** Time of one call of a built sheet function that spills a table, with the arguments of its longest example [ms]. */
export function spillTime(code: string, declared: SpillFunction, calls: number): number {
  const context = createContext({});
  runInContext(code, context);
  const example = [...declared.examples].sort(
    (one, other) => other.result.length - one.result.length,
  )[0];
  context['call'] = (example?.args ?? []).map((one) =>
    typeof one === 'object' ? one.map((cell) => [cell]) : one,
  );
  const times = Array.from({ length: calls }, () => {
    const start = performance.now();
    const answer: unknown = runInContext(`${declared.name}(...call)`, context);
    if (typeof answer !== 'object') throw new Error(`${declared.name} spilled no table`);
    return performance.now() - start;
  });
  return median(times);
}
