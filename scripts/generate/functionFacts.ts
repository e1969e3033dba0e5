import { boundsIn } from '../../shared/book/reading/parseCell.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import {
  type ListParameter,
  MOST_ITEMS,
  type SheetFunction,
} from '../../shared/functions/sheetFunctionTypes.ts';
import { MEASURES, type MeasureName, type UnitSystem } from '../../shared/units/measures.ts';
import { fromEngine } from '../../shared/units/toEngine.ts';
import { UNITS } from '../../shared/units/units.ts';

const SYSTEMS: readonly UnitSystem[] = ['US', 'metric'];

/** What a call fills: its own cell or row, once for each row of its ranges; or a whole table. */
const ANSWERS = { row: 'row by row', table: 'a column', spill: 'a table with headings' } as const;

/** The declarations as plain data: docs/functions.json holds them, docs/functions.md is written from them. */
export function functionFacts(functions: readonly SheetFunction[]) {
  return [...functions]
    .sort((one, other) => (one.name < other.name ? -1 : 1))
    .map((declared) => ({
      name: declared.name,
      family: declared.family,
      about: declared.about,
      notes: declared.notes,
      params: Object.entries(declared.params).map(([key, parameter]) => ({
        name: fieldOf(key, parameter),
        about: parameter.about,
        kind: parameter.kind,
        ...parameterFacts(parameter),
      })),
      answers: ANSWERS[declared.kind],
      returns: declared.returns.map((result) => ({
        name: 'perItemOf' in result && result.perItemOf ? `layer … ${result.name}` : result.name,
        about: result.about,
        kind: result.kind,
        ...(result.measure ? { unit: unitLabels(result.measure) } : {}),
      })),
      examples:
        declared.kind === 'table'
          ? []
          : declared.examples.map((example) => ({
              formula: formulaOf(declared.name, example.args),
              ...example,
            })),
    }));
}

export type FunctionFacts = ReturnType<typeof functionFacts>[number];

function parameterFacts(parameter: SheetFunction['params'][string]) {
  if (parameter.kind === 'table') return { sheet: parameter.sheet };
  if (parameter.kind === 'text') return {};
  if (parameter.kind === 'choice')
    return {
      choices: parameter.choices,
      ...(parameter.default === undefined ? {} : { default: parameter.default }),
    };
  const { measure } = parameter;
  const list = parameter.kind === 'list' ? listFacts(parameter) : {};
  const usual = parameter.kind === 'list' ? undefined : parameter.default;
  const inBoth = <Value>(valueIn: (system: UnitSystem) => Value) => ({
    US: valueIn('US'),
    metric: valueIn('metric'),
  });
  return {
    ...list,
    ...(measure ? { unit: unitLabels(measure) } : {}),
    bounds: measure
      ? inBoth((system) => boundsIn(parameter.bounds, MEASURES[measure][system]))
      : parameter.bounds,
    ...(usual === undefined
      ? {}
      : {
          default: measure ? inBoth((system) => inUnit(usual, measure, system)) : usual,
        }),
  };
}

function listFacts({ matches, oneForAll, optional, most = MOST_ITEMS }: ListParameter) {
  const count = matches
    ? `${matches.less ? 'one fewer than' : 'as many as'} ${fieldOf(matches.list, {})}${oneForAll ? ', or one for all' : ''}`
    : `at most ${most}`;
  return { count, optional: optional ?? false };
}

function inUnit(value: number, measure: MeasureName, system: UnitSystem): number {
  return Number(fromEngine(value, MEASURES[measure][system]).toPrecision(6));
}

function unitLabels(measure: MeasureName): Readonly<Record<string, string>> {
  return Object.fromEntries(
    SYSTEMS.map((system) => [system, UNITS[MEASURES[measure][system]].label]),
  );
}

type Typed = string | number;

function formulaOf(name: string, args: readonly (Typed | readonly Typed[])[]): string {
  const column = (one: readonly Typed[]) => `{${one.map(typedWords).join('; ')}}`;
  const words = args.map((one) => (typeof one === 'object' ? column(one) : typedWords(one)));
  return `=${name}(${words.join(', ')})`;
}

function typedWords(one: Typed): string {
  if (typeof one === 'number') return String(one);
  return one === '' ? '' : `"${one}"`;
}
