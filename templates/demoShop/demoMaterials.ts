import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { MATERIALS } from '../../shared/book/tables/materials.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'material',
  'kind',
  'density',
  'dropVolume',
  'spoonDensity',
  'packSize',
  'packUnit',
  'packPrice',
  'lot',
  'supplier',
  'safetySheet',
  'maximumTemperature',
  'maximumLoading',
  'reorderPoint',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof MATERIALS, typeof COLUMNS>[] = [
  ['Plastisol medium', 'plastisol', 1.04, null, null, 1, 'gal', 62, 'PM-2610', 'Supplier 1', 'Binder 1, page 1', 375, null, 2],
  ['Plastisol soft', 'plastisol', 1.02, null, null, 1, 'gal', 62, 'PS-2609', 'Supplier 1', 'Binder 1, page 2', 375, null, 1],
  ['Softener', 'softener', 0.98, null, null, 32, 'fl oz', 24, 'SO-2604', 'Supplier 1', 'Binder 1, page 3', 375, 0.3, 0.5],
  ['Hardener', 'hardener', 1.15, null, null, 16, 'fl oz', 19.5, 'HA-2604', 'Supplier 1', 'Binder 1, page 4', 375, 0.2, 0.5],
  ['Heat stabilizer', 'stabilizer', 1, 45, null, 8, 'fl oz', 14, 'HS-2606', 'Supplier 1', 'Binder 1, page 5', 375, 0.02, 0.5],
  ['Black', 'colorant', 1.2, 40, null, 4, 'fl oz', 9.5, 'C-0117', 'Supplier 2', 'Binder 2, page 1', 375, 0.03, 0.5],
  ['White', 'colorant', 1.6, 42, null, 4, 'fl oz', 9.5, 'C-0121', 'Supplier 2', 'Binder 2, page 1', 375, 0.03, 0.5, 'Settles: shake a full minute.'],
  ['Brown', 'colorant', 1.25, 41, null, 4, 'fl oz', 9.5, 'C-0109', 'Supplier 2', 'Binder 2, page 1', 375, 0.03, 0.5],
  ['Green', 'colorant', 1.15, 40, null, 4, 'fl oz', 9.5, 'C-0112', 'Supplier 2', 'Binder 2, page 1', 375, 0.03, 0.25],
  ['Blue', 'colorant', 1.15, 38, null, 4, 'fl oz', 9.5, 'C-0113', 'Supplier 2', 'Binder 2, page 1', 375, 0.03, 0.25],
  ['Red', 'colorant', 1.2, 39, null, 4, 'fl oz', 9.5, 'C-0098', 'Supplier 2', 'Binder 2, page 2', 375, 0.03, 0.25, 'Bleeds into white: never side by side.'],
  ['Yellow', 'colorant', 1.25, 40, null, 4, 'fl oz', 9.5, 'C-0104', 'Supplier 2', 'Binder 2, page 2', 375, 0.03, 0.25],
  ['Pearl white mica', 'powder', 3, null, 0.3, 4, 'oz', 13, 'M-31', 'Supplier 2', 'Binder 2, page 4', null, 0.02, 0.25],
  ['Copper mica', 'powder', 3.1, null, 0.35, 4, 'oz', 14, 'M-34', 'Supplier 2', 'Binder 2, page 4', null, 0.02, 0.25],
  ['Fine silver glitter', 'glitter', 1.39, null, 0.6, 4, 'oz', 11, 'G-12', 'Supplier 3', 'Binder 2, page 6', 345, 0.03, 0.25, 'Add last; curls above its limit.'],
  ['Fine black glitter', 'glitter', 1.39, null, 0.6, 4, 'oz', 11, 'G-15', 'Supplier 3', 'Binder 2, page 6', 345, 0.03, 0.25],
  ['Fine salt', 'salt', 2.17, null, 1.2, 5, 'lb', 4.5, 'S-2', 'Supplier 4', 'Binder 2, page 8', null, 0.35, 0.5, 'Dry it before use; wipe the mold after.'],
  ['Worm hook, size 4', 'hook', null, null, null, 100, 'each', 28, null, 'Supplier 4', null, null, null, 1],
  ['Nail weight, 1/16 oz', 'weight', null, null, null, 50, 'each', 9, null, 'Supplier 4', null, null, null, 1],
  ['Zip bag, 4 x 6 in', 'bag', null, null, null, 500, 'each', 31, null, 'Supplier 4', null, null, null, 0.2],
  ['Bag label', 'label', null, null, null, 1000, 'each', 26, null, 'Supplier 4', null, null, null, 0.1],
];

/** Invented purchases. Densities in g/mL, drops in µL, °F, prices in the workbook's currency. */
export function demoMaterials(): readonly TypedRow<typeof MATERIALS>[] {
  return typedRows<typeof MATERIALS, typeof COLUMNS>(COLUMNS, LINES);
}
