/** Bounds that many parameters have. */
export const POSITIVE = { greaterThan: 0 } as const;
export const NOT_NEGATIVE = { atLeast: 0 } as const;
