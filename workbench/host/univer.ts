import { createRequire } from 'node:module';

// The ES builds import a dependency in a way Node refuses; the CommonJS builds load.
const load = createRequire(import.meta.url);

export const core: typeof import('@univerjs/core') = load('@univerjs/core');
export const formula: typeof import('@univerjs/engine-formula') = load('@univerjs/engine-formula');
export const sheets: typeof import('@univerjs/sheets') = load('@univerjs/sheets');
export const sheetsFormula: typeof import('@univerjs/sheets-formula') = load(
  '@univerjs/sheets-formula',
);
export const dataValidation: typeof import('@univerjs/data-validation') = load(
  '@univerjs/data-validation',
);
export const sheetsDataValidation: typeof import('@univerjs/sheets-data-validation') = load(
  '@univerjs/sheets-data-validation',
);
export const sheetsFilter: typeof import('@univerjs/sheets-filter') =
  load('@univerjs/sheets-filter');
