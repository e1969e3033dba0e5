/** Ids of the operations of the workbench's own, which tell windows what the grid does not know. */
export const OPERATION_IDS = {
  /** Lists the protected ranges. */
  protections: 'workbench.protections',
  /** Lists the charts. */
  charts: 'workbench.charts',
} as const;
