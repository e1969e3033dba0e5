import type { PlainElement } from '../../shared/elements/plainElement.ts';
import { drawElements } from './drawElements.ts';

/** As wide as a picture is drawn [px]; between them it follows the dialog. On paper the wider one fits a page. */
const NARROWEST = 300;
const WIDEST = 700;

/** Draws each picture into its place (`.drawing`, in the same order), anew at every width so that its letters keep their size. */
export function drawToWidth<Picture>(
  pictures: readonly Picture[],
  page: HTMLElement,
  drawing: (picture: Picture, width: number) => PlainElement,
): void {
  const places = [...page.querySelectorAll<HTMLElement>('.drawing')];
  const draw = () => {
    pictures.forEach((picture, index) => {
      const place = places[index];
      if (place === undefined) return;
      const width = Math.min(Math.max(place.clientWidth, NARROWEST), WIDEST);
      place.replaceChildren(drawElements(drawing(picture, width)));
    });
  };
  draw();
  window.addEventListener('resize', draw);
}
