import { build } from 'esbuild';
import { ALL_COMMANDS } from '../../shared/commands/allCommands.ts';
import { ALL_FUNCTIONS } from '../../shared/functions/allFunctions.ts';
import * as entryPoints from '../../src/main.ts';
import { GLOBAL_NAME } from './globalName.ts';
import { leaveOutTexts } from './leaveOutTexts.ts';
import { refusedSyntax } from './refusedSyntax.ts';
import { sheetFunctionStub } from './sheetFunctionStub.ts';

/** Entry points that the stubs of commands and sheet functions call. */
const CALLED_BY_STUBS = ['callSheetFunction', 'runCommand'];

/**
 * The script: one global, then a plain top-level function for each menu item, command and sheet function.
 * @param lineLimit - longest line but for texts that cannot be broken [characters]; one line where left out
 * @throws Error on any warning, on syntax past ES2019 but for `?.` and `??`, and on a global that the platform lacks
 */
export async function buildCode(lineLimit?: number): Promise<string> {
  const result = await build({
    entryPoints: ['src/main.ts'],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: GLOBAL_NAME,
    target: 'es2019',
    // The platform's own samples use both; written out they weigh 17 kB.
    supported: { 'optional-chain': true, 'nullish-coalescing': true },
    platform: 'neutral',
    mainFields: ['module', 'main'],
    charset: 'utf8',
    minify: true,
    inject: ['scripts/build/localGlobals.js'],
    plugins: [leaveOutTexts],
    legalComments: 'inline',
    footer: { js: stubs() },
    ...(lineLimit === undefined ? {} : { lineLimit }),
  });
  if (result.warnings.length > 0)
    throw new Error(result.warnings.map(({ text }) => text).join('\n'));
  const code = result.outputFiles[0]?.text ?? '';
  const refused = refusedSyntax(code);
  if (refused.length > 0) throw new Error(`the script: ${refused.join('; ')}`);
  return code;
}

function stubs(): string {
  const called = Object.keys(entryPoints)
    .filter((name) => !CALLED_BY_STUBS.includes(name))
    .sort();
  const plain = called.map(
    (name) => `function ${name}() { return ${GLOBAL_NAME}.${name}.apply(null, arguments); }`,
  );
  const commands = Object.keys(ALL_COMMANDS)
    .sort()
    .map((name) => `function ${name}(asked){return ${GLOBAL_NAME}.runCommand('${name}',asked)}`);
  return [...plain, ...commands, ...ALL_FUNCTIONS.map(sheetFunctionStub)].join('\n');
}
