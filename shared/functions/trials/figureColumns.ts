/** Columns of a fitted figure, without units: each row names its own. */
export const FIGURE_COLUMNS = [
  { name: 'parameter', about: 'What was found, with its unit', kind: 'text' },
  { name: 'value', about: 'Best figure, or "no fit"', kind: 'number' },
  { name: 'standard error', about: 'Two times out of three it is off by less', kind: 'number' },
  { name: 'verdict', about: 'What to make of it', kind: 'text' },
] as const;
