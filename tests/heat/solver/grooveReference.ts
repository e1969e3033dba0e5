/** A rectangular groove in metal at one temperature, open on top. SI and °C. */
export interface Groove {
  readonly width: number;
  readonly depth: number;
  readonly startTemperature: number;
  readonly moldTemperature: number;
  readonly airTemperature: number;
  readonly surfaceCoefficient: number;
}

const WALL = 1500;
const CONDUCTIVITY = 0.15;
const HEAT = 1000 * 1900;

/**
 * Two-dimensional reference for a groove: explicit finite volumes over half of it, mirrored at its middle. Shares no code
 * with the engine.
 * @param cells - each way over half the width and over the depth
 * @returns mean and middle of the surface, read at every step until `until` seconds
 */
export function grooveReference(groove: Groove, cells: number, until: number) {
  const across = groove.width / 2 / cells;
  const up = groove.depth / cells;
  const [gAcross, gUp] = [(CONDUCTIVITY * up) / across, (CONDUCTIVITY * across) / up];
  const gSide = up / (1 / WALL + across / (2 * CONDUCTIVITY));
  const gFloor = across / (1 / WALL + up / (2 * CONDUCTIVITY));
  const toAir = 1 / (1 / groove.surfaceCoefficient + up / (2 * CONDUCTIVITY));
  const gAir = across * toAir;
  const capacity = HEAT * across * up;
  const most = 2 * (Math.max(gAcross, gSide) + Math.max(gUp, gFloor));
  const step = (0.9 * capacity) / most;
  let now = new Float64Array(cells * cells).fill(groove.startTemperature);
  const readings = [{ time: 0, mean: groove.startTemperature, surface: groove.startTemperature }];
  for (let time = step; time < until; time += step) {
    const next = new Float64Array(cells * cells);
    for (let row = 0; row < cells; row += 1)
      for (let column = 0; column < cells; column += 1) {
        const here = now[row * cells + column] ?? Number.NaN;
        const at = (r: number, c: number) => now[r * cells + c] ?? Number.NaN;
        // Column 0 is at the middle of the groove, row 0 at the floor.
        const left = column === 0 ? 0 : gAcross * (at(row, column - 1) - here);
        const right =
          column === cells - 1
            ? gSide * (groove.moldTemperature - here)
            : gAcross * (at(row, column + 1) - here);
        const below =
          row === 0 ? gFloor * (groove.moldTemperature - here) : gUp * (at(row - 1, column) - here);
        const above =
          row === cells - 1
            ? gAir * (groove.airTemperature - here)
            : gUp * (at(row + 1, column) - here);
        next[row * cells + column] = here + (step * (left + right + below + above)) / capacity;
      }
    now = next;
    const top = now[(cells - 1) * cells] ?? Number.NaN;
    const mean = now.reduce((sum, one) => sum + one, 0) / now.length;
    const surface = top - ((toAir * up) / (2 * CONDUCTIVITY)) * (top - groove.airTemperature);
    readings.push({ time, mean, surface });
  }
  return readings;
}
