import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bondPictureFile } from '../../../scripts/generate/bondPictureFile.ts';
import { CAUSE_RULES } from '../../../shared/outcomes/causes/diagnose.ts';

test('the picture of the bond fit stands alone, and comes out the same each time', () => {
  const pictures = bondPictureFile();
  expect(Object.keys(pictures)).toEqual(['docs/pictures/bond-fit.svg']);
  for (const svg of Object.values(pictures))
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox=.*<\/svg>\n$/s);
  expect(bondPictureFile()).toEqual(pictures);
});

test('docs/quality.md lists every cause that the rules know, and no other', () => {
  const text = readFileSync('docs/quality.md', 'utf8');
  const [, table = ''] = /\| likely cause \|.*?\n\| ---.*?\n(.*?)\n\n/s.exec(text) ?? [];
  const causes = table.split('\n').map((line) => line.split('|')[1]?.trim());
  expect([...causes].sort()).toEqual(CAUSE_RULES.map(({ cause }) => cause).sort());
});
