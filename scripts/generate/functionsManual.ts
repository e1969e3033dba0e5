import type { FunctionFacts } from './functionFacts.ts';

const FAMILIES = {
  batch: 'Pieces, volumes, doses',
  heat: 'Heat',
  quality: 'Yield',
  book: 'The book',
} as const;

/** docs/functions.md: one section per family, one table per function. */
export function functionsManual(facts: readonly FunctionFacts[]): string {
  const families = Object.entries(FAMILIES).map(([family, title]) => {
    const sections = facts.filter((one) => one.family === family).map(section);
    return `## ${title}\n\n${sections.join('\n')}`;
  });
  return `# Sheet functions\n\n${INTRODUCTION}\n\n${families.join('\n')}`;
}

const INTRODUCTION =
  'Written from the declarations in `shared/functions` by `npm run generate`; do not edit. Every argument takes one cell or a range; ' +
  'ranges in one call have one shape, a single cell serves every row, a row of blanks stays blank. The last argument, `units`, is "US" or ' +
  '"metric" and may be left out (US). A value that cannot be used answers with one sentence in its own cell; the other rows are still computed.';

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
    `\nAnswers: ${results.join('; ')}\n`,
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
  return Object.entries(bounds)
    .map(([rule, limit]) =>
      rule === 'whole' ? 'whole' : `${WORDS[rule] ?? rule} ${String(limit)}`,
    )
    .join(', ');
}

const WORDS: Readonly<Record<string, string>> = {
  greaterThan: '>',
  atLeast: '≥',
  lessThan: '<',
  atMost: '≤',
};

function blankCell(parameter: ParameterFacts): string {
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

function resultWords(result: string | number | readonly (string | number)[]): string {
  return Array.isArray(result) ? result.map(String).join(' | ') : String(result);
}
