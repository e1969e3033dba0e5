import { formatFixed } from '../units/formatPlain.ts';

/** What to make of a measured figure: good enough, or what would tell it better. */
export function figureAdviceText(
  figure: { readonly value: number; readonly standardError: number },
  enough: number,
  remedy: string,
): string {
  const share = figure.standardError / figure.value;
  const known = `known to ±${formatFixed(share * 100, share < 0.01 ? 1 : 0)} %`;
  return share <= enough ? `good: ${known}` : `${known} only: ${remedy}`;
}
