import type { AnswerBand } from '../uncertainty/band.ts';

/** How sure a figure is: `18 to 34 min`; empty where it is not known or has no width. Ends are rounded outward by the caller. */
export function bandText(
  band: AnswerBand | undefined,
  lowText: (low: number) => string,
  highText: (high: number) => string,
): string {
  const { low, high } = band ?? {};
  if (low === undefined && high === undefined) return '';
  if (high === undefined) return `${lowText(low ?? 0)} or more`;
  if (low === undefined) return `${highText(high)} or less`;
  const [from, to] = [lowText(low), highText(high)];
  const unit = /\s\D+$/.exec(to)?.[0] ?? '';
  // `18 to 34 min`, but `50 s to 2 min`.
  const start =
    unit !== '' && from.endsWith(unit) && ![from, to].some((end) => /\d\s\D+\d/.test(end))
      ? from.slice(0, -unit.length)
      : from;
  return from === to ? '' : `${start} to ${to}`;
}

/** A text in brackets behind what it is about: ` (18 to 34 min)`; nothing where there is none. */
export function inBrackets(text: string): string {
  return text === '' ? '' : ` (${text})`;
}
