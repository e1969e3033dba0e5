import { parseCell } from '../book/reading/parseCell.ts';
import { DEFECT_KEYS, POUR_LOG, TEAR_KEYS, type TEAR_TESTS } from '../book/tables/pourLog.ts';
import type { PourLogRecord } from '../book/tables.ts';
import { describe } from '../errors/describe.ts';
import { InputError, type InputFacts } from '../errors/InputError.ts';
import type { Problem } from '../errors/refuse.ts';
import type { UnitSystem } from '../units/measures.ts';
import { FORM_KEYS, type FormKey, fieldsFor, formColumn, formUnit, NEEDED } from './formColumn.ts';
import { typedWeights } from './pieceWeights.ts';

/** The filled part of a log row in engine units, or everything that is wrong with what was typed. */
export type CheckedOutcome =
  | { readonly kind: 'ok'; readonly record: PourLogRecord }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

type Typed = Readonly<Partial<Record<FormKey, string>>>;
type Values = Partial<Record<FormKey, string | number>>;

/**
 * Checks an entry of the log form as typed, in the shop's units, and gives all messages at once. A kind of defect left
 * blank is a counted 0; a tear test left blank is the weakest of its joints where each of them has one of its own.
 *
 * @param layers - layers of the pattern that was poured; readings of further layers must be blank
 */
export function checkOutcome(
  entry: Typed,
  { system, layers }: { readonly system: UnitSystem; readonly layers: number },
): CheckedOutcome {
  const problems: Problem[] = [];
  const values: Values = {};
  const fields = fieldsFor(layers);
  const typed = withWeakest(entry, layers);
  for (const key of FORM_KEYS) {
    const text = (typed[key] ?? '').trim();
    if (text === '' && NEEDED.includes(key))
      problems.push(problem(key, { rule: { kind: 'given' }, value: '' }));
    if (text === '') continue;
    if (fields.includes(key)) readOne(key, text, system, values, problems);
    else problems.push(problem(key, { rule: blankFor(layers), value: text }));
  }
  problems.push(...countProblems(values));
  for (const key of DEFECT_KEYS) values[key] ??= 0;
  if (problems.length > 0) return { kind: 'refused', problems };
  return { kind: 'ok', record: values as PourLogRecord }; // each value was parsed by its own column
}

function readOne(
  key: FormKey,
  text: string,
  system: UnitSystem,
  values: Values,
  problems: Problem[],
): void {
  const column = formColumn(key);
  if (key === 'weights') {
    const weights = typedWeights(text, system);
    if (weights === undefined) problems.push(problem(key, { rule: WEIGHTS[system], value: text }));
    else values[key] = weights;
    return;
  }
  if (column.kind === 'text') {
    values[key] = text;
    return;
  }
  try {
    values[key] = parseCell(text, column, { field: fieldName(key), unit: formUnit(key, system) });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems.push({ field: key, text: describe(error) });
  }
}

const WEIGHTS = {
  US: { kind: 'form', wanted: 'weights above 0 such as 0.31, 0.3 oz' },
  metric: { kind: 'form', wanted: 'weights above 0 such as 8.8, 8.5 g' },
} as const satisfies Readonly<Record<UnitSystem, InputFacts['rule']>>;

/** What a piece did as a whole, from a test of each of its joints. */
function withWeakest(entry: Typed, layers: number): Typed {
  if ((entry.tearTest ?? '').trim() !== '' || layers < 2) return entry;
  const joints = TEAR_KEYS.slice(0, layers - 1).map((key) => (entry[key] ?? '').trim());
  const weakest = WEAKEST_FIRST.find((test) => joints.includes(test));
  const isWhole = joints.every((test) => WEAKEST_FIRST.some((one) => one === test));
  return isWhole && weakest ? { ...entry, tearTest: weakest } : entry;
}

const WEAKEST_FIRST = [
  'peels clean',
  'tears in part',
  'tears through',
  'not tested',
] as const satisfies readonly (typeof TEAR_TESTS)[number][];

/** Pieces cannot be good or bad without having been poured. */
function countProblems(values: Values): readonly Problem[] {
  const { poured, good } = values;
  if (typeof poured !== 'number' || typeof good !== 'number') return [];
  if (good > poured)
    return [
      problem('good', { rule: { kind: 'at most', limit: poured, what: 'poured' }, value: good }),
    ];
  const bad = DEFECT_KEYS.reduce((sum, key) => sum + Number(values[key] ?? 0), 0);
  if (bad <= poured - good) return [];
  const rule = { kind: 'at most', limit: poured - good, what: 'poured less good' } as const;
  const first = DEFECT_KEYS.find((key) => Number(values[key] ?? 0) > 0) ?? 'other';
  return [{ field: first, text: describe({ field: 'defects together', rule, value: bad }) }];
}

function blankFor(layers: number): InputFacts['rule'] {
  return {
    kind: 'form',
    wanted: `blank, since the pattern has ${layers === 1 ? '1 layer' : `${layers} layers`}`,
  };
}

function problem(key: FormKey, facts: Omit<InputFacts, 'field'>): Problem {
  return { field: key, text: describe({ field: fieldName(key), ...facts }) };
}

function fieldName(key: FormKey): string {
  return POUR_LOG.columns[key].heading.toLowerCase();
}
