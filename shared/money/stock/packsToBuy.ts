/** How a material stands once all open orders are poured, in its pack unit. */
interface Standing {
  readonly material: string;
  readonly free: number;
  readonly packSize: number | undefined;
  readonly reorderLevel: number | undefined;
  readonly isLow: boolean;
  readonly isShort: boolean;
}

/**
 * Whole packs to buy, so that the orders are served and what is left stands above the reorder point.
 *
 * Short: the fewest packs with free + packs x size >= 0. Low: the fewest with free + packs x size > reorder level.
 */
export function packsToBuy({ material, free, packSize, reorderLevel, isLow, isShort }: Standing): {
  readonly packs: number;
  readonly noPacks?: string;
} {
  if (!isLow && !isShort) return { packs: 0 };
  if (packSize === undefined)
    return { packs: 0, noPacks: `pack size of ${material} must be given in Materials` };
  const toNothing = isShort ? Math.ceil(clean(-free / packSize)) : 0;
  const aboveLevel = isLow ? Math.floor(clean(((reorderLevel ?? 0) - free) / packSize)) + 1 : 0;
  return { packs: Math.max(0, toNothing, aboveLevel) };
}

/** Without the last binary digits, which would add a pack. */
function clean(packs: number): number {
  return Number(packs.toPrecision(9));
}
