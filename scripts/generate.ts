import { readFile, writeFile } from 'node:fs/promises';
import { ALL_FUNCTIONS } from '../shared/functions/allFunctions.ts';
import { bondPictureFile } from './generate/bondPictureFile.ts';
import { functionFacts } from './generate/functionFacts.ts';
import { functionsManual } from './generate/functionsManual.ts';
import { heatPictureFiles } from './generate/heatPictureFiles.ts';
import { layerTiming } from './generate/layerTiming.ts';
import { qualityPictureFiles } from './generate/qualityPictureFiles.ts';
import { withRoomsTable } from './rooms/withRoomsTable.ts';

/** Writes the generated documents; with `--check` writes nothing and fails when one is not fresh. */
const facts = functionFacts(ALL_FUNCTIONS);
const documents = {
  'docs/functions.json': `${JSON.stringify(facts, null, 2)}\n`,
  'docs/functions.md': functionsManual(facts),
  'docs/layer-timing.md': layerTiming(),
  ...heatPictureFiles(),
  ...bondPictureFile(),
  ...qualityPictureFiles(),
  'DEVELOPERS.md': withRoomsTable(await readFile('DEVELOPERS.md', 'utf8')),
};
const stale: string[] = [];
for (const [file, text] of Object.entries(documents)) {
  const old = await readFile(file, 'utf8').catch(() => '');
  if (old === text) continue;
  stale.push(file);
  if (!process.argv.includes('--check')) await writeFile(file, text);
}
if (stale.length > 0 && process.argv.includes('--check')) {
  process.stderr.write(`not fresh, run npm run generate: ${stale.join(', ')}\n`);
  process.exitCode = 1;
}
