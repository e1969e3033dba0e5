import { createContext, runInContext } from 'node:vm';
import { demoRows } from '../../templates/demoShop/demoShop.ts';
import { demoCells, platformOf, type Values } from './demoCells.ts';

export interface LogTime {
  readonly name: string;
  readonly rows: number;
  readonly milliseconds: number;
}

const ROUNDS = 12;
const RUNS = 3;

/** What is asked of the script; `rounds` says how many rows an answer took in. */
const CALLS = [
  { name: 'POUR_YIELD_TABLE', call: `POUR_YIELD_TABLE('mold', cells.log, cells.shop)` },
  { name: 'POUR_CHART', call: `POUR_CHART('all', 'runs', 'all points', cells.log, cells.shop)` },
  { name: 'qualityFor', call: `qualityFor({})`, rounds: 'answer.rounds' },
] as const;

/**
 * Times of the built script over a *Pour log* of growing length: the demo shop's rounds again and again, twelve a run, with
 * every column it fills, one row in fifty correcting the one before. Reads are arrays in memory, so this is the script's own
 * work; the quickest of a few runs.
 */
export function logTimes(code: string, counts: readonly number[]): readonly LogTime[] {
  return counts.flatMap((count) => {
    const sheets = demoCells({ pourLog: logRows(count) });
    const cells = { log: sheets.get('Pour log'), shop: sheets.get('Shop') };
    const context = createContext({ ...platformOf(sheets), cells });
    runInContext(code, context);
    return CALLS.map((asked) => {
      const times = Array.from({ length: RUNS }, () => {
        const start = performance.now();
        const answer: unknown = runInContext(`answer = ${asked.call}`, context);
        const milliseconds = performance.now() - start;
        if (typeof answer !== 'object') throw new Error(`${asked.name} answered ${String(answer)}`);
        const seen: unknown = 'rounds' in asked ? runInContext(asked.rounds, context) : undefined;
        if (seen !== undefined && seen !== count - corrected(count))
          throw new Error(`${asked.name} saw ${String(seen)} rounds of ${count}`);
        return milliseconds;
      });
      return { name: asked.name, rows: count, milliseconds: Math.min(...times) };
    });
  });
}

const CORRECTED_EVERY = 50;

function corrected(count: number): number {
  return Math.floor(count / CORRECTED_EVERY);
}

function logRows(count: number): readonly Values[] {
  const base = demoRows().pourLog.filter(({ corrects }) => corrects === undefined);
  return Array.from({ length: count }, (_, index): Values => {
    const isCorrection = index % CORRECTED_EVERY === CORRECTED_EVERY - 1;
    const run = Math.floor(index / ROUNDS);
    const day = new Date(Date.UTC(2026, 10, 30) - (count - index) * 3_600_000);
    return {
      ...(base[index % base.length] as Values), // a log row is texts and numbers
      run: `R-${run}`,
      round: (index % ROUNDS) + 1,
      entry: `e-${index}`,
      loggedAt: day.toISOString().slice(0, 16).replace('T', ' '),
      order: String(1000 + run),
      ...(isCorrection ? { corrects: `e-${index - 1}` } : {}),
    };
  });
}
