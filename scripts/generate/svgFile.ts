import { elementsToHtml } from '../../shared/elements/elementsToHtml.ts';
import { drawPicture } from '../../shared/pictures/drawPicture.ts';
import type { Picture } from '../../shared/pictures/pictureTypes.ts';

const WIDTH = 720;

/** A picture as a file that stands alone: it needs its namespace. */
export function svgFile(picture: Picture): string {
  const svg = elementsToHtml(drawPicture(picture, WIDTH));
  return `${svg.replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ')}\n`;
}
