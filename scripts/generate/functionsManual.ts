import type { FunctionFacts } from './functionFacts.ts';

const FAMILIES = {
  batch: 'Pieces, volumes, doses',
  heat: 'Heat',
  trials: 'Trials: your own figures',
  quality: 'Yield',
  day: 'Pour day',
  money: 'Price and tax',
  book: 'The book',
} as const;

/** docs/functions.md: one section per family, one table per function. */
export function functionsManual(facts: readonly FunctionFacts[]): string {
  const families = Object.entries(FAMILIES).map(([family, title]) => {
    const sections = facts.filter((one) => one.family === family).map(section);
    return `## ${title}\n\n${sections.join('\n')}`;
  });
  return `# Sheet functions\n\n${INTRODUCTION.join('\n\n')}\n\n${families.join('\n')}`;
}

const INTRODUCTION = [
  'Written from the declarations in `shared/functions` by `npm run generate`; do not edit. The last argument, `units`, is "US" or "metric" ' +
    'and may be left out (US). What a call answers with stands under it:',
  '**Row by row.** Every argument takes one cell or a range; ranges in one call have one shape, a single cell serves every row, a row of ' +
    'blanks stays blank. A value that cannot be used answers with one sentence in its own cell; the other rows are still computed.',
  '**A table with headings.** An argument called a list takes one column or one row whole, or a single cell; blanks at its end do not count, ' +
    'a blank between two values is an error that names its place. The answer fills the cells to the right and below: the first row is the headings, ' +
    'with units, so that the whole range can be charted as it stands. Leave those cells empty. A value that cannot be used answers with one sentence in the first cell. ' +
    'While all lists are blank the answer is blank.',
  '**To chart a heat-up:** type `=POUR_HEAT_CURVE(B1, B2, B3, B4)` with the plate setting and the block’s length, width and height in B1 to B4, ' +
    'select the two columns it fills, then *Insert › Chart*, type *Line* or *Scatter*, *Use row 1 as headers*. The chart follows the cells; ' +
    'put your own readings beside it by minute as a second series. `POUR_LAYER_CURVE` charts the same way, one line a column.',
];

function section(one: FunctionFacts): string {
  const names = [...one.params.map(({ name }) => name), 'units'].join(', ');
  const parameters = one.params.map(
    (parameter) =>
      `| ${parameter.name} | ${unitCell(parameter)} | ${rangeCell(parameter)} | ${blankCell(parameter)} | ${parameter.about} |`,
  );
  const results = one.returns.map(
    (result) =>
      `${result.name}${'unit' in result && result.unit ? ` [${joined(result.unit)}]` : ''}: ${result.about}`,
  );
  const examples = one.examples.map(
    (example) => `- \`${example.formula}\` → ${resultWords(example.result)} (${example.source})`,
  );
  return [
    `### ${one.name}\n`,
    `${one.about}\n`,
    `\`${one.name}(${names})\`\n`,
    '| argument | unit | allowed | if blank | meaning |\n| --- | --- | --- | --- | --- |',
    ...parameters,
    `\nAnswers ${one.answers}: ${results.join('; ')}\n`,
    `${one.notes}\n`,
    ...(examples.length > 0 ? ['Examples:\n', ...examples, ''] : []),
  ].join('\n');
}

type ParameterFacts = FunctionFacts['params'][number];

function unitCell(parameter: ParameterFacts): string {
  return 'unit' in parameter && parameter.unit ? joined(parameter.unit) : '';
}

function rangeCell(parameter: ParameterFacts): string {
  if ('sheet' in parameter) return `the sheet ${parameter.sheet} with its headings`;
  if ('choices' in parameter) return parameter.choices.join(', ');
  if (!('bounds' in parameter)) return '';
  const bounds = 'US' in parameter.bounds ? parameter.bounds.US : parameter.bounds;
  const limits = Object.entries(bounds).map(([rule, limit]) =>
    rule === 'whole' ? 'whole' : `${WORDS[rule] ?? rule} ${String(limit)}`,
  );
  const all =
    'count' in parameter ? [`list, ${parameter.count}`, `each ${limits.join(', ')}`] : limits;
  return all.join('count' in parameter ? '; ' : ', ');
}

const WORDS: Readonly<Record<string, string>> = {
  greaterThan: '>',
  atLeast: '≥',
  lessThan: '<',
  atMost: '≤',
};

function blankCell(parameter: ParameterFacts): string {
  if ('optional' in parameter) return parameter.optional ? 'see meaning' : '';
  if (!('default' in parameter) || parameter.default === undefined) return '';
  const value: unknown = parameter.default;
  return typeof value === 'object' && value !== null && 'US' in value && 'metric' in value
    ? joined({ US: String(value.US), metric: String(value.metric) })
    : String(value);
}

function joined(labels: Readonly<Record<string, string>>): string {
  const { US = '', metric = '' } = labels;
  return US === metric ? US : `${US} / ${metric}`;
}

function resultWords(result: FunctionFacts['examples'][number]['result']): string {
  if (!Array.isArray(result)) return String(result);
  // A list or a list of lists.
  return (result as readonly unknown[])
    .map((one) => (Array.isArray(one) ? one.map(String).join(' | ') : String(one)))
    .join(Array.isArray(result[0]) ? ' // ' : ' | ');
}
