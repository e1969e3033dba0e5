import type { Book } from '../../book/book.ts';
import { indexBook } from '../../book/bookIndex.ts';
import { bondFit } from '../../quality/bond/bondFit.ts';
import { MEASURES, type UnitSystem } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { bondJoints } from './bondJoints.ts';
import { bondTexts, noBondText } from './bondTexts.ts';

/** The fitted figure, or every joint that it comes from. */
export const BOND_CELLS = ['fit', 'joints'] as const;

type Cells = readonly (string | number)[];

/** The bond temperature from the torn joints of the log, headings first. @param what one of {@link BOND_CELLS} */
export function bondCells(book: Book, what: string): readonly Cells[] {
  return what === 'joints' ? jointCells(book) : fitCells(book);
}

function fitCells(book: Book): readonly Cells[] {
  const { units } = book.shop;
  const fit = bondFit(bondJoints(indexBook(book)).joints);
  const label = UNITS[MEASURES.temperature[units]].label;
  const headings = [
    'parameter',
    `value (${label})`,
    `low (${label})`,
    `high (${label})`,
    'verdict',
  ];
  if (fit.kind !== 'fitted')
    return [headings, ['bond temperature', '', '', '', noBondText(fit, units)]];
  const { value, low, high } = fit.threshold;
  const degrees = [value, low, high].map((one) => inUnits(one, units));
  return [headings, ['bond temperature', ...degrees, bondTexts(fit, units).join('; ')]];
}

function jointCells(book: Book): readonly Cells[] {
  const { units } = book.shop;
  const { joints, leftOut, twoPiece } = bondJoints(indexBook(book));
  const label = UNITS[MEASURES.temperature[units]].label;
  return [
    ['row', 'run', 'layers', `contact temperature (${label})`, 'tear test'],
    ...joints.map(({ row, run, below, contactTemperature, tear }) => [
      row,
      run,
      `${below}-${below + 1}`,
      inUnits(contactTemperature, units),
      tear,
    ]),
    ...leftOut.map(({ row, because }) => [row, '', '', '', `left out: ${because}`]),
    ...(twoPiece === 0
      ? []
      : [['', '', '', '', `left out: ${twoPiece} tested rows of two-piece molds`]]),
  ];
}

function inUnits(value: number, system: UnitSystem): number {
  return fromEngine(value, MEASURES.temperature[system]);
}
