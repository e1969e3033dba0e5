import { indexBook } from '../../shared/book/bookIndex.ts';
import { heatPictures as picturesOf } from '../../shared/pictures/heatPictures.ts';
import type { Picture } from '../../shared/pictures/pictureTypes.ts';
import { findTrials } from '../../shared/trials/findTrials.ts';
import { planInDetail } from '../../shared/trials/planInDetail.ts';
import { demoBook } from '../../templates/demoShop/demoBook.ts';
import { svgFile } from './svgFile.ts';

/** Three layers in two molds. */
const ORDER = '1006';
/** As the add-on draws its bands. */
const SEED = 1;

/** docs/pictures/*.svg: an order of the invented shop and its first heat trial, drawn as the dialog draws them. */
export function heatPictureFiles(): Readonly<Record<string, string>> {
  const { heatTrials, ...book } = demoBook();
  const index = indexBook(book);
  const row = book.orders.find(({ record }) => record.order === ORDER);
  if (row === undefined) throw new Error(`the demo shop has no order ${ORDER}`);
  const plan = planInDetail(index, row, heatTrials, SEED);
  if (plan.kind === 'missing') throw new Error(plan.missing.map(({ text }) => text).join('; '));
  const trials = { index, heatTrials, benchTrials: [], measuredFigures: [] };
  const [trial] = findTrials(trials).proposals.flatMap(({ pictures }) => pictures);
  if (trial === undefined) throw new Error('the demo shop has no heat trial to draw');
  const drawn: readonly Picture[] = [...picturesOf(plan, book.shop), trial];
  return Object.fromEntries(
    drawn.map((picture) => [`docs/pictures/${picture.kind}.svg`, svgFile(picture)]),
  );
}
