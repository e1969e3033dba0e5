import type { SheetFunction } from '../../shared/functions/sheetFunctionTypes.ts';
import { MEASURES } from '../../shared/units/measures.ts';
import { UNITS } from '../../shared/units/units.ts';
import { GLOBAL_NAME } from './globalName.ts';

/** The top-level function and doc comment through which a cell reaches a declared sheet function. */
export function sheetFunctionStub(declared: SheetFunction): string {
  const names = [...Object.keys(declared.params), 'units'];
  const params = Object.entries(declared.params).map(
    ([key, parameter]) => ` * @param {${typeWords(parameter)}} ${key} ${paramWords(parameter)}`,
  );
  return [
    `/**\n * ${oneLine(declared.about)}`,
    ...params,
    ' * @param {string} units US or metric.',
    ` * @return {${declared.returns.length > 1 || declared.kind !== 'row' ? 'Array' : 'number|string'}} ${oneLine(declared.returns.map((result) => result.name).join(', '))}`,
    ' * @customfunction\n */',
    `function ${declared.name}(${names.join(', ')}){return ${GLOBAL_NAME}.callSheetFunction('${declared.name}',arguments)}`,
  ].join('\n');
}

type AnyParameter = SheetFunction['params'][string];

function typeWords(parameter: AnyParameter): string {
  if (parameter.kind === 'table' || parameter.kind === 'list') return 'Array';
  return parameter.kind === 'number' ? 'number' : 'string';
}

function paramWords(parameter: AnyParameter): string {
  if (parameter.kind === 'table') return `The sheet ${parameter.sheet}.`;
  if (parameter.kind === 'text') return oneLine(parameter.about);
  const unit = parameter.kind === 'choice' ? '' : unitWords(parameter);
  const choices = parameter.kind === 'choice' ? ` One of: ${parameter.choices.join(', ')}.` : '';
  const blank = isOptional(parameter) ? ' Optional.' : '';
  const about = parameter.about.replace(/\.$/, '');
  return oneLine(`${about}${unit}.${choices}${blank}`);
}

function isOptional(parameter: AnyParameter): boolean {
  if (parameter.kind === 'list') return parameter.optional === true;
  if (parameter.kind === 'table' || parameter.kind === 'text') return false;
  return parameter.default !== undefined;
}

/** `, in fl oz / mL`, or nothing where there is no unit. */
function unitWords(parameter: { readonly measure?: keyof typeof MEASURES }): string {
  if (parameter.measure === undefined) return '';
  const { US, metric } = MEASURES[parameter.measure];
  const [first, second] = [UNITS[US].label, UNITS[metric].label];
  if (first === '') return ', as 0 to 1 or per cent';
  return first === second ? `, in ${first}` : `, in ${first} / ${second}`;
}

/** The platform flattens line breaks and markup; a comment must not end early. */
function oneLine(words: string): string {
  return words.replace(/\s+/g, ' ').replace(/\*\//g, '').trim();
}
