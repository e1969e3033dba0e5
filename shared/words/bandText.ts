import type { AnswerBand } from '../uncertainty/band.ts';

/** How sure a figure is, in brackets behind it: ` (18 to 34 min)`; nothing where it is not known. Ends are rounded outward by the caller. */
export function bandText(
  band: AnswerBand | undefined,
  sayLow: (low: number) => string,
  sayHigh: (high: number) => string,
): string {
  const { low, high } = band ?? {};
  if (low === undefined && high === undefined) return '';
  if (high === undefined) return ` (${sayLow(low ?? 0)} or more)`;
  if (low === undefined) return ` (${sayHigh(high)} or less)`;
  const [from, to] = [sayLow(low), sayHigh(high)];
  const unit = /\s\D+$/.exec(to)?.[0] ?? '';
  // `18 to 34 min`, but `50 s to 2 min`.
  const start =
    unit !== '' && from.endsWith(unit) && ![from, to].some((end) => /\d\s\D+\d/.test(end))
      ? from.slice(0, -unit.length)
      : from;
  return from === to ? '' : ` (${start} to ${to})`;
}
