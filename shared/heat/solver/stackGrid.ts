import { entry } from './entry.ts';
import type { CompletePour, CompleteStack } from './layerStack.ts';

/** The layers lying in the mold, cut into cells from the metal up. All figures per m2 of slab. */
export interface StackGrid {
  /** Per cell, with the shape factor [J/(m2 K)] */
  readonly capacities: Float64Array;
  /** From a cell's middle to its face [m2 K/W] */
  readonly halves: Float64Array;
  /** One more than cells: mold to first cell, cell to cell, last cell to air [W/(m2 K)] */
  readonly conductances: Float64Array;
  /** Height of each cell's middle [m] */
  readonly middles: Float64Array;
  /** First cell of each layer, and the number of cells at the end */
  readonly starts: readonly number[];
}

/**
 * Grid of the layers poured so far: equal cells within a layer. Cells that crowd at the faces, where a pour starts steep,
 * were tried and left more error in open times and windows.
 */
export function stackGrid(pours: readonly CompletePour[], stack: CompleteStack): StackGrid {
  const perLayer = stack.resolution.cellsPerLayer;
  const count = perLayer * pours.length;
  const capacities = new Float64Array(count);
  const halves = new Float64Array(count);
  const middles = new Float64Array(count);
  // One shape for all that lies in the cavity: that of the fill up to the last pour.
  const shapeFactor = pours[pours.length - 1]?.shapeFactor ?? 1;
  let floor = 0;
  pours.forEach((pour, layer) => {
    const heat = pour.density * pour.specificHeat * shapeFactor;
    const height = pour.thickness / perLayer;
    for (let cell = 0; cell < perLayer; cell += 1) {
      const index = layer * perLayer + cell;
      capacities[index] = heat * height;
      halves[index] = height / (2 * pour.conductivity);
      middles[index] = floor + (cell + 0.5) * height;
    }
    floor += pour.thickness;
  });
  const starts = Array.from({ length: pours.length + 1 }, (_, layer) => layer * perLayer);
  return { capacities, halves, middles, starts, conductances: conductances(halves, stack) };
}

function conductances(halves: Float64Array, stack: CompleteStack): Float64Array {
  const count = halves.length;
  const joined = new Float64Array(count + 1);
  joined[0] = 1 / (1 / stack.wallCoefficient + entry(halves, 0));
  for (let cell = 1; cell < count; cell += 1)
    joined[cell] = 1 / (entry(halves, cell - 1) + entry(halves, cell));
  // Written so that no loss at all needs no division by zero.
  const { coefficient } = stack.air;
  joined[count] = coefficient / (1 + coefficient * entry(halves, count - 1));
  return joined;
}
