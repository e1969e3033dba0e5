import type { LogisticPoint } from '../../../shared/quality/logistic/logisticPoint.ts';

/** Launch temperature [°F] and whether a field joint was damaged: DALAL1989, 23 flights. */
export const LAUNCHES: readonly LogisticPoint[] = [
  [53, 1],
  [57, 1],
  [58, 1],
  [63, 1],
  [66, 0],
  [67, 0],
  [67, 0],
  [67, 0],
  [68, 0],
  [69, 0],
  [70, 1],
  [70, 0],
  [70, 1],
  [70, 0],
  [72, 0],
  [73, 0],
  [75, 0],
  [75, 1],
  [76, 0],
  [76, 0],
  [78, 0],
  [79, 0],
  [81, 0],
].map(([at = 0, passed = 0]) => ({ at, passed, of: 1 }));
