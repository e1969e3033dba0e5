import type { Spoonful } from './nearestSpoon.ts';

/** A spoonful as it is said: `1/4 tsp`, `3 × 1/8 tsp`, `2 × 1 tsp`. */
export function spoonText({ scoops, part }: Spoonful): string {
  const size = part === 1 ? '1 tsp' : `1/${part} tsp`;
  return scoops === 1 ? size : `${scoops} × ${size}`;
}
