import type { UnitSystem } from '../units/measures.ts';
import { say, sayShare } from '../words/say.ts';
import type { FigureName } from './figureCells.ts';

/** A figure as the shop reads it, in its units: `84.7 W/m²·K`, `202 °F`, `41 %`. */
export function sayFigure(name: FigureName, value: number, system: UnitSystem): string {
  switch (name) {
    case 'contact conductance':
    case 'contact error':
      return say(value, 'conductance', system, value < 10 ? 1 : 0);
    case 'set temperature':
    case 'bond temperature':
      return say(value, 'temperature', system, 0);
    case 'drop volume':
      return say(value, 'dropVolume', system, 1);
    case 'heat loss':
    case 'microwave efficiency':
      return sayShare(value);
  }
}

/** How far a figure may be off, as {@link sayFigure} says the figure. */
export function sayFigureError(name: FigureName, error: number, system: UnitSystem): string {
  return name === 'set temperature' || name === 'bond temperature'
    ? say(error, 'temperatureDifference', system, 1)
    : sayFigure(name, error, system);
}
