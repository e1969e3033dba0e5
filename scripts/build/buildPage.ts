import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { tokenizer, tokTypes } from 'acorn';
import { build } from 'esbuild';

const require = createRequire(import.meta.url);
const INLINED = /<link rel="stylesheet" href="([^"]+)"\s*\/?>|<script src="([^"]+)"><\/script>/g;

/** Where the stylesheets find the font that the printed pages carry. */
const PAPER_FONT = dirname(require.resolve('@fontsource/arimo/files/arimo-latin-400-normal.woff2'));

/**
 * Builds one page of the sidebar into a single HTML file: each linked stylesheet and script of the shell is replaced by
 * its built text, since the platform serves no other file.
 * @throws Error on any bundler warning
 */
export async function buildPage(shell: string, outFile: string): Promise<void> {
  const page = await readFile(shell, 'utf8');
  const parts: string[] = [];
  let end = 0;
  for (const match of page.matchAll(INLINED)) {
    const [tag, style, script] = match;
    const tagName = style === undefined ? 'script' : 'style';
    const text = await bundled(join(dirname(shell), style ?? script ?? ''));
    parts.push(page.slice(end, match.index), `<${tagName}>\n${text}</${tagName}>`);
    end = match.index + tag.length;
  }
  await writeFile(outFile, parts.join('') + page.slice(end));
}

async function bundled(file: string): Promise<string> {
  const result = await build({
    entryPoints: [file],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2019',
    // The platform cuts what looks like a comment out of template literals of a page it serves.
    supported: { 'template-literal': false },
    charset: 'utf8',
    minify: true,
    legalComments: 'inline',
    loader: { '.woff2': 'dataurl' },
    alias: { 'paper-font': PAPER_FONT },
  });
  if (result.warnings.length > 0)
    throw new Error(result.warnings.map(({ text }) => text).join('\n'));
  const text = result.outputFiles[0]?.text ?? '';
  if (file.endsWith('.ts') && holdsTemplate(text))
    throw new Error(`${file}: a template literal is left, which the platform would serve damaged`);
  return text.replace(/<\/(script|style)/gi, '<\\/$1');
}

/** Whether a script has a template literal, told by its tokens: a text may hold the mark of one. */
export function holdsTemplate(script: string): boolean {
  for (const token of tokenizer(script, { ecmaVersion: 2020 }))
    if (token.type === tokTypes.backQuote) return true;
  return false;
}
