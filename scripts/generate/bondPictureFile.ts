import { indexBook } from '../../shared/book/bookIndex.ts';
import { findTrials } from '../../shared/trials/findTrials.ts';
import { demoBook } from '../../templates/demoShop/demoBook.ts';
import { svgFile } from './svgFile.ts';

/** docs/pictures/bond-fit.svg: the torn joints of the invented shop, as the panel draws them. */
export function bondPictureFile(): Readonly<Record<string, string>> {
  const { heatTrials, ...book } = demoBook();
  const trials = { index: indexBook(book), heatTrials, benchTrials: [], measuredFigures: [] };
  const bond = findTrials(trials)
    .proposals.flatMap(({ pictures }) => pictures)
    .find(({ kind }) => kind === 'bond');
  if (bond === undefined) throw new Error('the demo shop has no torn joints to draw');
  return { 'docs/pictures/bond-fit.svg': svgFile(bond) };
}
