import type { MATERIALS } from '../../shared/book/tables/materials.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented purchases. Densities in g/mL, drops in µL, °F, prices in the workbook's currency. */
// biome-ignore format: one row a line
export const DEMO_MATERIALS: readonly TradeRow<typeof MATERIALS>[] = [
  { material: 'Plastisol medium', kind: 'plastisol', density: 1.04, packSize: 1, packUnit: 'gal', packPrice: 62, lot: 'PM-2610', supplier: 'Supplier 1', safetySheet: 'Binder 1, page 1', maximumTemperature: 375, reorderPoint: 2 },
  { material: 'Plastisol soft', kind: 'plastisol', density: 1.02, packSize: 1, packUnit: 'gal', packPrice: 62, lot: 'PS-2609', supplier: 'Supplier 1', safetySheet: 'Binder 1, page 2', maximumTemperature: 375, reorderPoint: 1 },
  { material: 'Softener', kind: 'softener', density: 0.98, packSize: 32, packUnit: 'fl oz', packPrice: 24, lot: 'SO-2604', supplier: 'Supplier 1', safetySheet: 'Binder 1, page 3', maximumTemperature: 375, maximumLoading: 0.3, reorderPoint: 0.5 },
  { material: 'Hardener', kind: 'hardener', density: 1.15, packSize: 16, packUnit: 'fl oz', packPrice: 19.5, lot: 'HA-2604', supplier: 'Supplier 1', safetySheet: 'Binder 1, page 4', maximumTemperature: 375, maximumLoading: 0.2, reorderPoint: 0.5 },
  { material: 'Heat stabilizer', kind: 'stabilizer', density: 1, dropVolume: 45, packSize: 8, packUnit: 'fl oz', packPrice: 14, lot: 'HS-2606', supplier: 'Supplier 1', safetySheet: 'Binder 1, page 5', maximumTemperature: 375, maximumLoading: 0.02, reorderPoint: 0.5 },
  { material: 'Black', kind: 'colorant', density: 1.2, dropVolume: 40, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0117', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 1', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.5 },
  { material: 'White', kind: 'colorant', density: 1.6, dropVolume: 42, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0121', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 1', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.5, notes: 'Settles: shake a full minute.' },
  { material: 'Brown', kind: 'colorant', density: 1.25, dropVolume: 41, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0109', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 1', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.5 },
  { material: 'Green', kind: 'colorant', density: 1.15, dropVolume: 40, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0112', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 1', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.25 },
  { material: 'Blue', kind: 'colorant', density: 1.15, dropVolume: 38, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0113', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 1', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.25 },
  { material: 'Red', kind: 'colorant', density: 1.2, dropVolume: 39, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0098', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 2', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.25, notes: 'Bleeds into white: never side by side.' },
  { material: 'Yellow', kind: 'colorant', density: 1.25, dropVolume: 40, packSize: 4, packUnit: 'fl oz', packPrice: 9.5, lot: 'C-0104', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 2', maximumTemperature: 375, maximumLoading: 0.03, reorderPoint: 0.25 },
  { material: 'Pearl white mica', kind: 'powder', density: 3, spoonDensity: 0.3, packSize: 4, packUnit: 'oz', packPrice: 13, lot: 'M-31', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 4', maximumLoading: 0.02, reorderPoint: 0.25 },
  { material: 'Copper mica', kind: 'powder', density: 3.1, spoonDensity: 0.35, packSize: 4, packUnit: 'oz', packPrice: 14, lot: 'M-34', supplier: 'Supplier 2', safetySheet: 'Binder 2, page 4', maximumLoading: 0.02, reorderPoint: 0.25 },
  { material: 'Fine silver glitter', kind: 'glitter', density: 1.39, spoonDensity: 0.6, packSize: 4, packUnit: 'oz', packPrice: 11, lot: 'G-12', supplier: 'Supplier 3', safetySheet: 'Binder 2, page 6', maximumTemperature: 345, maximumLoading: 0.03, reorderPoint: 0.25, notes: 'Add last; curls above its limit.' },
  { material: 'Fine black glitter', kind: 'glitter', density: 1.39, spoonDensity: 0.6, packSize: 4, packUnit: 'oz', packPrice: 11, lot: 'G-15', supplier: 'Supplier 3', safetySheet: 'Binder 2, page 6', maximumTemperature: 345, maximumLoading: 0.03, reorderPoint: 0.25 },
  { material: 'Fine salt', kind: 'salt', density: 2.17, spoonDensity: 1.2, packSize: 5, packUnit: 'lb', packPrice: 4.5, lot: 'S-2', supplier: 'Supplier 4', safetySheet: 'Binder 2, page 8', maximumLoading: 0.35, reorderPoint: 0.5, notes: 'Dry it before use; wipe the mold after.' },
  { material: 'Worm hook, size 4', kind: 'hook', packSize: 100, packUnit: 'each', packPrice: 28, supplier: 'Supplier 4', reorderPoint: 1 },
  { material: 'Nail weight, 1/16 oz', kind: 'weight', packSize: 50, packUnit: 'each', packPrice: 9, supplier: 'Supplier 4', reorderPoint: 1 },
  { material: 'Zip bag, 4 x 6 in', kind: 'bag', packSize: 500, packUnit: 'each', packPrice: 31, supplier: 'Supplier 4', reorderPoint: 0.2 },
  { material: 'Bag label', kind: 'label', packSize: 1000, packUnit: 'each', packPrice: 26, supplier: 'Supplier 4', reorderPoint: 0.1 },
];
