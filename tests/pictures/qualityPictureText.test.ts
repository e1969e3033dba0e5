import { expect, test } from 'vitest';
import { qualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import { drawQualityPicture } from '../../shared/pictures/drawQualityPicture.ts';
import { pictureText } from '../../shared/pictures/pictureText.ts';
import { qualityPictureText } from '../../shared/pictures/qualityPictureText.ts';
import { demoBook } from '../../templates/demoShop/demoBook.ts';

const { pictures } = qualitySummary(demoBook(), '2026-12-01', { points: 'rounds' });

test('the demo shop has each kind of picture of the log', () => {
  expect(pictures.map(({ kind }) => kind).sort()).toEqual([
    'defect-pareto',
    'share-chart',
    'weight-chart',
    'yield-curve',
  ]);
});

test.each(pictures)('$kind: names itself, and the drawing holds that title and text', (picture) => {
  const text = qualityPictureText(picture);
  expect(text.startsWith(`${picture.title}: `)).toBe(true);
  expect(pictureText(picture)).toBe(text);
  const [title, description] = drawQualityPicture(picture, 400).children;
  expect(title).toMatchObject({ tag: 'title', children: [picture.title] });
  expect(description).toMatchObject({ tag: 'desc', children: [text] });
});
