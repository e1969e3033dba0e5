import { createHash } from 'node:crypto';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { build, type Plugin } from 'esbuild';

/** Hyphenation dictionaries of the grid's text engine: 5 MB that cells never use. */
const NO_DICTIONARIES: Plugin = {
  name: 'no-dictionaries',
  setup: (building) => {
    building.onResolve({ filter: /^\.\/[a-z][\w-]*\.js$/ }, ({ importer, kind, path }) => {
      const unused = kind === 'dynamic-import' && importer.includes('engine-render');
      return unused ? { path, namespace: 'no-dictionary' } : undefined;
    });
    building.onLoad({ filter: /.*/, namespace: 'no-dictionary' }, () => ({
      contents: 'export default [];',
    }));
  },
};

/**
 * Bundles the workbench page into a folder: `index.html`, `main.js`, `page.css`, and `frame.js`, which the add-on's pages get.
 *
 * @returns size of the page's script [bytes]
 */
export async function buildWorkbenchPage(folder: string): Promise<number> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  await build({
    entryPoints: {
      main: 'workbench/page/main.ts',
      frame: 'workbench/page/addOn/frame.ts',
      page: 'workbench/page/page.css',
    },
    outdir: folder,
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    legalComments: 'none',
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    plugins: [NO_DICTIONARIES],
  });
  const [script, style, page] = await Promise.all([
    readFile(`${folder}/main.js`),
    readFile(`${folder}/page.css`),
    readFile('workbench/page/index.html', 'utf8'),
  ]);
  const version = createHash('sha256').update(script).update(style).digest('hex').slice(0, 16);
  const size = (script.length / 1e6).toFixed(1);
  const html = page.replaceAll('{{version}}', version).replaceAll('{{size}}', size);
  await writeFile(`${folder}/index.html`, html);
  return script.length;
}
