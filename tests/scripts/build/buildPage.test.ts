import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { buildPage, holdsTemplate } from '../../../scripts/build/buildPage.ts';

test('a page keeps what stands in a template literal and looks like a comment, and has no such literal', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'poursmith-page-'));
  writeFileSync(
    join(folder, 'page.ts'),
    ['document.title = `see //', '{document.URL} /* here */`;'].join('$'),
  );
  writeFileSync(join(folder, 'Page.html'), '<body><script src="page.ts"></script></body>');
  await buildPage(join(folder, 'Page.html'), join(folder, 'Built.html'));
  const built = readFileSync(join(folder, 'Built.html'), 'utf8');
  rmSync(folder, { recursive: true });
  expect(built).toContain('"see //"');
  expect(built).toContain('" /* here */"');
  expect(built).not.toContain('`');
});

test.each([
  { script: 'var a = `b`;', holds: true },
  { script: 'var a = "`b`";', holds: false },
])('holdsTemplate tells a literal from a text: $script', ({ script, holds }) => {
  expect(holdsTemplate(script)).toBe(holds);
});

test.each(['Sidebar', 'RunSheet', 'PourDay', 'Quality', 'Causes', 'Heat', 'Quote', 'Purchases'])(
  'dist/%s.html has no template literal',
  (name) => {
    const page = readFileSync(`dist/${name}.html`, 'utf8');
    const scripts = [...page.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(
      ([, text]) => text ?? '',
    );
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.some(holdsTemplate)).toBe(false);
  },
);
