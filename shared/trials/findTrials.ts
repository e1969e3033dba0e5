import { nameKey } from '../book/bookIndex.ts';
import type { MissingCells } from '../book/missingCells.ts';
import { SETTINGS } from '../book/settings/settings.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { gatherBench } from './bench/gatherBench.ts';
import { proposeBench } from './bench/proposeBench.ts';
import { gatherHeat, type Heating } from './contact/gatherHeat.ts';
import { proposeContact } from './contact/proposeContact.ts';
import { FIGURE_PARTS, type FigureName, figureCell, isSame } from './figureCell.ts';
import type {
  FigureKey,
  Found,
  Proposal,
  TrialResult,
  TrialsFound,
  TrialUsed,
  WayBack,
} from './proposal.ts';
import { proposeBond } from './proposeBond.ts';
import { type Adoption, adoptionKey, readJournal } from './readJournal.ts';
import type { TrialBook } from './trialBook.ts';
import { beyondCell, isInUse, wantedCells } from './wantedCells.ts';

/**
 * Everything that the trials of a book say: each figure beside the one in use, and the way back to the one before.
 * Nothing is refused as a whole; rows that cannot be used are listed with their reasons.
 */
export function findTrials(book: TrialBook): TrialsFound {
  const { shop } = book.index.book;
  const gaps = noMissingCells(book);
  const adoptions = readJournal(book, gaps);
  const found = [...contacts(book, gaps), ...benchFigures(book, gaps), ...proposeBond(book, gaps)];
  for (const stack of adoptions.values()) {
    const last = stack[stack.length - 1];
    if (last === undefined || found.some((one) => isOf(one, last))) continue;
    const { figure, of } = last;
    found.push({ figure, of, result: { kind: 'no trials' }, trials: [], pictures: [] });
  }
  const proposals = found.flatMap((one) => {
    const stack = adoptions.get(adoptionKey(one.figure, one.of)) ?? [];
    return proposalOf(book, one, stack[stack.length - 1]);
  });
  return { system: shop.units, proposals, problems: gaps.missing };
}

/** Where what is wrong with the rows is noted. */
export function noMissingCells({ index }: TrialBook): MissingCells {
  return { index, system: index.book.shop.units, missing: [] };
}

function isOf(one: Found, { figure, of }: Adoption): boolean {
  return one.figure === figure && nameKey(one.of) === nameKey(of);
}

function contacts(book: TrialBook, gaps: MissingCells): Found[] {
  return [...gatherHeat(book, gaps)].flatMap(([plate, heatings]) => {
    const contact = proposeContact(gaps, plate, heatings);
    const of = book.index.plates.get(plate)?.record.plate ?? '';
    if (contact === undefined) return [];
    const { result, pictures } = contact;
    const trials = trialsOf(contact.heatings.map(({ trial, date }: Heating) => ({ trial, date })));
    return [{ figure: 'contact' as const, of, result, trials, pictures }];
  });
}

function benchFigures(book: TrialBook, gaps: MissingCells): Found[] {
  return gatherBench(book, gaps).flatMap((group) => {
    const found = proposeBench(gaps, group);
    if (found === undefined) return [];
    const { figure, of, measured, rows } = found;
    const result = { kind: 'fitted', figure: measured, count: rows.length, remarks: [] } as const;
    const trials = trialsOf(
      rows.map(({ record }) => ({ trial: record.trial ?? '', date: record.date })),
    );
    return [{ figure, of, result, trials, pictures: [] }];
  });
}

/** Each trial once, in the order of the rows. */
function trialsOf(
  rows: readonly { readonly trial: string; readonly date: string | undefined }[],
): readonly TrialUsed[] {
  const trials = new Map<string, TrialUsed>();
  for (const { trial, date } of rows) {
    const key = nameKey(trial);
    if (!trials.has(key)) trials.set(key, { trial, ...(date === undefined ? {} : { date }) });
  }
  return [...trials.values()];
}

/** One proposal; none for a plate or material that is no longer listed. */
function proposalOf(
  book: TrialBook,
  found: Found,
  last: Adoption | undefined,
): readonly Proposal[] {
  const { figure, of, result } = found;
  const [name] = FIGURE_PARTS[figure];
  const cell = figureCell(book, name, of);
  if (cell === undefined) return [];
  const cells = result.kind === 'fitted' ? wantedCells(book, { figure, of }, result) : [];
  const text = beyondCell(cells, book.index.book.shop.units);
  const told: TrialResult = text === undefined ? result : { kind: 'beyond', text };
  const back = last && wayBack(book, last, name);
  return [
    {
      ...found,
      result: told,
      present: presentOf(book, figure, of, cell.value),
      isInUse: text === undefined && isInUse(cells),
      ...(back ? { back } : {}),
    },
  ];
}

function wayBack(book: TrialBook, last: Adoption, name: FigureName): WayBack {
  const isKept = last.changes.every((change) =>
    isSame(figureCell(book, change.name, last.of)?.value, change.after),
  );
  if (!isKept) return { kind: 'changed by hand' };
  const own = last.changes.find((change) => change.name === name);
  const before = own ? own.before : figureCell(book, name, last.of)?.value;
  const { entry, trials, date } = last;
  return {
    kind: 'ready',
    entry,
    trials,
    ...(before === undefined ? {} : { before }),
    ...(date === undefined ? {} : { date }),
  };
}

/** The figure in use: the cell's, else what the plan takes for a blank one. */
function presentOf(
  book: TrialBook,
  figure: FigureKey,
  of: string,
  value: number | undefined,
): Proposal['present'] {
  const { shop } = book.index.book;
  if (figure === 'microwaveEfficiency' || figure === 'bondTemperature') {
    const isDefault = shop[figure] === SETTINGS[figure].value;
    return { value: shop[figure], from: isDefault ? 'default' : 'own' };
  }
  if (value !== undefined) return { value, from: 'own' };
  return { value: usualFigure(book, figure, of), from: 'default' };
}

function usualFigure(book: TrialBook, figure: FigureKey, of: string): number {
  if (figure === 'setTemperature') return book.index.book.shop.setTemperature;
  if (figure === 'dropVolume') return DEFAULTS.dropVolume.value;
  return book.index.plates.get(nameKey(of))?.record.kind === 'flat thick plate'
    ? DEFAULTS.contactConductanceThickPlate.value
    : DEFAULTS.contactConductanceGriddle.value;
}
