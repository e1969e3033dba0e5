export type DayWork =
  | 'lay out'
  | 'weigh and color'
  | 'wash up'
  | 'set on the plate'
  | 'heat'
  | 'cook'
  | 'pour'
  | 'top off'
  | 'cool'
  | 'demold'
  | 'inspect'
  | 'pack'
  | 'clean';

/** One task of the day, as people speak of it. */
export interface DayTask {
  /** `2041 pour vein, round 2`; different for every task of the day */
  readonly id: string;
  readonly order: string;
  readonly what: DayWork;
  readonly round?: number;
  readonly layer?: string;
}

export function dayTask(
  order: string,
  what: DayWork,
  { round, layer }: { readonly round?: number; readonly layer?: string } = {},
): DayTask {
  const words = [order, what, ...(layer === undefined ? [] : [layer])].join(' ');
  return {
    id: round === undefined ? words : `${words}, round ${round}`,
    order,
    what,
    ...(round !== undefined && { round }),
    ...(layer !== undefined && { layer }),
  };
}
