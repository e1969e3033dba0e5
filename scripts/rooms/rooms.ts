/** A folder that is entered through one idea, and the rooms that it may import; `shared/x` is a room of `shared`. */
export interface Room {
  readonly room: string;
  /** What it holds, in a few words. */
  readonly holds: string;
  readonly imports: readonly string[];
}

const ENGINE = ['units', 'errors', 'uncertainty', 'material', 'batch', 'heat', 'quality'];

/**
 * Every room from the ground up: one imports rooms above it in this list and no others. The list is the rule that is checked, and the
 * map in DEVELOPERS.md.
 */
export const ROOMS: readonly Room[] = [
  shared('units', 'one table of units, conversion, formatting', []),
  shared('errors', '`InputError`, the one function that words it, refusals', ['units']),
  shared('uncertainty', 'evenly spread draws, spreads of a figure, ranges and what widens them', [
    'errors',
  ]),
  shared(
    'material',
    'every default figure with its range and evidence; mixtures, water, floating',
    ['units', 'errors'],
  ),
  shared('batch', 'pieces, shares, cups, doses, one pass of pouring, minutes of work', [
    'units',
    'errors',
  ]),
  shared(
    'heat',
    'boiling, heat-up, layers, bond, cup, cooling; `solver`, `heatUp` and `fit` are the accurate path of plans, curves and fits, the closed forms beside them answer cells by the thousand',
    ['errors', 'material', 'batch'],
  ),
  shared('quality', 'yields, intervals, logistic fits, control charts, the bond threshold', [
    'errors',
    'batch',
    'heat',
  ]),
  shared('schedule', 'any tasks with windows, holds and hours', ['errors']),
  shared(
    'book',
    'every sheet, column and setting declared once; cells read into records; look-ups by name; what a row lacks',
    ['units', 'errors', 'batch'],
  ),
  shared('words', 'how quantities, durations, clock times, money and ranges are said', [
    'units',
    'uncertainty',
    'book',
  ]),
  shared('plan', 'order row and book to plan: facts, amounts, heat, uncertainty, warnings', [
    ...ENGINE,
    'book',
    'words',
  ]),
  shared('log', 'the form of the log, its checks, runs and entries', [
    'units',
    'errors',
    'book',
    'plan',
  ]),
  shared('outcomes', 'what the log teaches: yields, charts, joints, causes, and their texts', [
    'units',
    'errors',
    'material',
    'heat',
    'quality',
    'book',
    'words',
    'plan',
    'log',
  ]),
  shared(
    'trials',
    'the shop’s own measurements beside the figures in use, and the journal of changes',
    ['units', 'errors', 'material', 'heat', 'quality', 'book', 'words', 'plan', 'outcomes'],
  ),
  shared('money', 'cost, price, excise, quote, stock, books; money in whole minor units', [
    'units',
    'errors',
    'material',
    'book',
    'words',
    'plan',
  ]),
  shared('day', 'the pour day: tasks, timetable, replan, checklist, timers', [
    'units',
    'errors',
    'batch',
    'schedule',
    'book',
    'words',
    'plan',
  ]),
  shared('elements', 'a page as a tree of plain elements, and its writer', ['errors']),
  shared(
    'pictures',
    'what a picture shows to an SVG tree with its text: `chart`, and a folder a picture',
    ['units', 'quality', 'book', 'words', 'plan', 'outcomes', 'trials', 'day', 'elements'],
  ),
  shared('paper', 'printable documents and the sheets that are written whole', [
    'units',
    'heat',
    'book',
    'words',
    'plan',
    'outcomes',
    'money',
    'day',
    'elements',
    'pictures',
  ]),
  shared('functions', 'the sheet functions, declared once', [
    'units',
    'errors',
    'material',
    'batch',
    'heat',
    'quality',
    'book',
    'plan',
    'outcomes',
    'trials',
    'money',
    'day',
  ]),
  shared(
    'commands',
    'what a page asks, what it gets back, and for each command its decision: book and request in, rows to write and answer out',
    [
      'units',
      'errors',
      'book',
      'words',
      'plan',
      'log',
      'outcomes',
      'trials',
      'money',
      'day',
      'pictures',
      'paper',
    ],
  ),
  { room: 'templates', holds: 'the demo shop as data', imports: ['shared'] },
  {
    room: 'src',
    holds:
      'the thin platform side: one shell for commands, the runner of sheet functions, menu, set-up, writers of whole sheets',
    imports: ['shared', 'templates'],
  },
  {
    room: 'sidebar',
    holds: 'the bench panel and the dialogs, each built into one HTML file',
    imports: ['shared'],
  },
  {
    room: 'workbench',
    holds:
      'the local spreadsheet: runs the built add-on as it is; touches `dist/` and the declarations',
    imports: ['shared'],
  },
  {
    room: 'scripts',
    holds: 'build, generate, bench, rooms: thin, their logic in folders beside them',
    imports: ['shared', 'templates', 'src', 'workbench'],
  },
  {
    room: 'tests',
    holds: 'mirrors the tree; `tests/sources.ts` names every outside source',
    imports: ['shared', 'templates', 'src', 'sidebar', 'scripts', 'workbench'],
  },
];

function shared(room: string, holds: string, imports: readonly string[]): Room {
  return { room: `shared/${room}`, holds, imports: imports.map((one) => `shared/${one}`) };
}
