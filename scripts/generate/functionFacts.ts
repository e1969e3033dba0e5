import { boundsIn } from '../../shared/book/parseCell.ts';
import type { SheetFunction } from '../../shared/functions/defineFunction.ts';
import { fieldOf } from '../../shared/functions/fieldOf.ts';
import { fromEngine } from '../../shared/units/convert.ts';
import { MEASURES, type MeasureName, type UnitSystem } from '../../shared/units/measures.ts';
import { UNITS } from '../../shared/units/units.ts';

const SYSTEMS: readonly UnitSystem[] = ['US', 'metric'];

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
      returns: declared.returns.map(({ name, about, kind, measure }) => ({
        name,
        about,
        kind,
        ...(measure ? { unit: unitLabels(measure) } : {}),
      })),
      examples:
        declared.kind === 'row'
          ? declared.examples.map((example) => ({
              formula: formulaOf(declared.name, example.args),
              ...example,
            }))
          : [],
    }));
}

export type FunctionFacts = ReturnType<typeof functionFacts>[number];

function parameterFacts(parameter: SheetFunction['params'][string]) {
  if (parameter.kind === 'table') return { sheet: parameter.sheet };
  if (parameter.kind === 'choice')
    return {
      choices: parameter.choices,
      ...(parameter.default === undefined ? {} : { default: parameter.default }),
    };
  const { measure } = parameter;
  const inBoth = <Value>(valueIn: (system: UnitSystem) => Value) => ({
    US: valueIn('US'),
    metric: valueIn('metric'),
  });
  return {
    ...(measure ? { unit: unitLabels(measure) } : {}),
    bounds: measure
      ? inBoth((system) => boundsIn(parameter.bounds, MEASURES[measure][system]))
      : parameter.bounds,
    ...(parameter.default === undefined
      ? {}
      : {
          default: measure
            ? inBoth((system) => inUnit(parameter.default ?? 0, measure, system))
            : parameter.default,
        }),
  };
}

function inUnit(value: number, measure: MeasureName, system: UnitSystem): number {
  return Number(fromEngine(value, MEASURES[measure][system]).toPrecision(6));
}

function unitLabels(measure: MeasureName): Readonly<Record<string, string>> {
  return Object.fromEntries(
    SYSTEMS.map((system) => [system, UNITS[MEASURES[measure][system]].label]),
  );
}

function formulaOf(name: string, args: readonly (string | number)[]): string {
  return `=${name}(${args.map((one) => (typeof one === 'string' ? (one === '' ? '' : `"${one}"`) : String(one))).join(', ')})`;
}
