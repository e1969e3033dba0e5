/** The number at an index that the caller's loop keeps inside the array. */
export function entry(values: ArrayLike<number>, index: number): number {
  return values[index] as number; // the loop's bounds are the array's; a check here would double the solver's time
}
