import type { UnitSystem } from '../units/measures.ts';
import { quantityText, shareText } from '../words/quantityText.ts';
import type { FigureName } from './figureCell.ts';

/** A figure as the shop reads it, in its units: `84.7 W/m²·K`, `202 °F`, `41 %`. */
export function figureText(name: FigureName, value: number, system: UnitSystem): string {
  switch (name) {
    case 'contact conductance':
    case 'contact error':
      return quantityText(value, 'conductance', system, value < 10 ? 1 : 0);
    case 'set temperature':
    case 'bond temperature':
      return quantityText(value, 'temperature', system, 0);
    case 'drop volume':
      return quantityText(value, 'dropVolume', system, 1);
    case 'heat loss':
    case 'microwave efficiency':
      return shareText(value);
  }
}

/** How far a figure may be off, as {@link figureText} says the figure. */
export function figureErrorText(name: FigureName, error: number, system: UnitSystem): string {
  return name === 'set temperature' || name === 'bond temperature'
    ? quantityText(error, 'temperatureDifference', system, 1)
    : figureText(name, error, system);
}
