import { readFile } from 'node:fs/promises';
import { ALL_FUNCTIONS } from '../shared/functions/allFunctions.ts';
import { booksTimes } from './bench/booksTimes.ts';
import { callTime, spillTime } from './bench/callTime.ts';
import { dayTimes } from './bench/dayTimes.ts';
import { firstGrid } from './bench/firstGrid.ts';
import { heatTimes } from './bench/heatTimes.ts';
import { loadTimes, median } from './bench/loadTimes.ts';
import { logTimes } from './bench/logTimes.ts';
import { stockTimes } from './bench/stockTimes.ts';

/** Prints what a person waits for: the script's size and load, each function over 10,000 rows, the heat of a plan. Run `npm run build` first. */
const ROWS = 10_000;
const LOADS = 20;
const TABLES = 20;
const DAYS = [
  { orders: 5, days: 2 },
  { orders: 10, days: 3 },
  { orders: 20, days: 5 },
  { orders: 30, days: 5 },
  // More than the week holds.
  { orders: 30, days: 5, times: 2 },
];

const code = await readFile('dist/Code.js', 'utf8');
loadTimes(code, 3); // warms the machine up, not the script
const loads = loadTimes(code, LOADS);
say(`dist/Code.js: ${(Buffer.byteLength(code) / 1000).toFixed(1)} kB`);
say(
  `load, median of ${LOADS} fresh contexts: ${median(loads.map(({ run }) => run)).toFixed(1)} ms`,
);
say(
  `compiling it anew each time: ${median(loads.map(({ compile }) => compile)).toFixed(1)} ms more`,
);
say(
  `\n${'function'.padEnd(18)}${'ms for 10,000 rows'.padStart(20)}${'rows per second'.padStart(18)}`,
);
for (const declared of ALL_FUNCTIONS) {
  if (declared.kind !== 'row') continue;
  const { name, milliseconds, rowsPerSecond } = callTime(code, declared, ROWS);
  say(
    `${name.padEnd(18)}${milliseconds.toFixed(0).padStart(20)}${rowsPerSecond.toFixed(0).padStart(18)}`,
  );
}

say('');
for (const { what, milliseconds } of heatTimes()) say(`${what}: ${milliseconds.toFixed(1)} ms`);

say(`\n${'function'.padEnd(18)}${'ms for one table'.padStart(20)}`);
for (const declared of ALL_FUNCTIONS) {
  if (declared.kind !== 'spill') continue;
  const milliseconds = spillTime(code, declared, TABLES);
  say(`${declared.name.padEnd(18)}${milliseconds.toFixed(1).padStart(20)}`);
}

say(`\n${'stock moves'.padEnd(18)}${'moves'.padStart(10)}${'ms'.padStart(10)}`);
for (const { name, moves, milliseconds } of stockTimes(code, [5000, 50_000]))
  say(`${name.padEnd(18)}${String(moves).padStart(10)}${milliseconds.toFixed(0).padStart(10)}`);

say(`\n${'books'.padEnd(18)}${'orders'.padStart(10)}${'moves'.padStart(10)}${'ms'.padStart(10)}`);
for (const { orders, moves, milliseconds } of booksTimes(code, [500, 5000]))
  say(
    `${'readBooks'.padEnd(18)}${String(orders).padStart(10)}${String(moves).padStart(10)}${milliseconds.toFixed(0).padStart(10)}`,
  );

say(`\n${'pour log'.padEnd(18)}${'rows'.padStart(10)}${'ms'.padStart(10)}`);
for (const { name, rows, milliseconds } of logTimes(code, [5000, 50_000]))
  say(`${name.padEnd(18)}${String(rows).padStart(10)}${milliseconds.toFixed(0).padStart(10)}`);

say(
  `\n${'pour day'.padEnd(18)}${'orders'.padStart(8)}${'rounds'.padStart(8)}${'days'.padStart(6)}${'ms'.padStart(8)}${'in time'.padStart(9)}${'over bound'.padStart(12)}`,
);
for (const { orders, rounds, days, milliseconds, inTime, overBound } of dayTimes(code, DAYS))
  say(
    `${'planDayFor'.padEnd(18)}${String(orders).padStart(8)}${String(rounds).padStart(8)}${String(days).padStart(6)}${milliseconds.toFixed(0).padStart(8)}${String(inTime).padStart(9)}${`${(100 * overBound).toFixed(0)} %`.padStart(12)}`,
  );

say(`\nfrom the page's address to its first grid: ${((await firstGrid()) / 1000).toFixed(1)} s`);

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
