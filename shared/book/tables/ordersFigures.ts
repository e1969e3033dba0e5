import type { Column } from '../column.ts';

/** Columns of *Orders* that fill themselves. */
export const ORDERS_FIGURES = {
  piecesToPour: {
    kind: 'computed',
    places: 0,
    heading: 'Pieces to pour',
    width: 80,
    about: 'Pieces to pour so that enough come out good, from the mold and pattern’s own record.',
  },
  rounds: {
    kind: 'computed',
    places: 0,
    heading: 'Rounds',
    width: 65,
    about: 'Times the molds in use are filled.',
  },
  plastisol: {
    kind: 'computed',
    places: 1,
    heading: 'Plastisol',
    width: 85,
    about: 'Plastisol to heat for the whole run, all layers.',
  },
  cups: {
    kind: 'computed',
    places: 0,
    heading: 'Cups',
    width: 60,
    about: 'Cups to weigh out, all layers.',
  },
  plateOn: {
    kind: 'computed',
    heading: 'Plate on',
    width: 110,
    about: 'When to switch the plate on so that the mold top is hot at the first pour.',
  },
  minutesOfWork: {
    kind: 'computed',
    places: 0,
    heading: 'Minutes of work',
    width: 85,
    about: 'Hands-on minutes of the run.',
  },
  cost: {
    kind: 'computed',
    by: 'money',
    places: 2,
    heading: 'Cost',
    width: 75,
    about:
      'Material, supplies, labor, energy, mold wear and overhead of the order, as planned now.',
  },
  quotePrice: {
    kind: 'computed',
    by: 'money',
    places: 2,
    heading: 'Quote price',
    width: 85,
    about:
      'What the customer would be quoted now for the whole line, with every charge and discount and without shipping and sales tax.',
  },
  margin: {
    kind: 'computed',
    by: 'money',
    places: 1,
    measure: 'fraction',
    heading: 'Margin',
    width: 70,
    about: 'Share of the agreed price, or of the quote price where none is agreed, above the cost.',
  },
  moneyNotes: {
    kind: 'computed',
    by: 'money',
    heading: 'Money notes',
    width: 220,
    about: 'What the cost leaves out or takes for granted, such as a material without a price.',
  },
  warnings: {
    kind: 'computed',
    heading: 'Warnings',
    width: 360,
    about: 'What is missing or will not work, in plain words.',
  },
} as const satisfies Readonly<Record<string, Column>>;
