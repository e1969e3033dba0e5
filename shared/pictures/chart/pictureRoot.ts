import type { PlainElement } from '../../elements/plainElement.ts';
import { shape } from '../../elements/shape.ts';
import { pictureText, pictureTitle } from '../pictureText.ts';
import type { Picture } from '../pictureTypes.ts';

/** How large a picture is drawn [px]. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

const FAMILY = 'Arial, Helvetica, Liberation Sans, sans-serif';

/** The picture as a whole: an image with its title and its text alternative, white behind. */
export function pictureRoot(
  picture: Picture,
  { width, height }: PictureSize,
  children: readonly PlainElement[],
): PlainElement {
  const { kind } = picture;
  const ids = { title: `picture-${kind}-title`, desc: `picture-${kind}-desc` };
  return shape(
    'svg',
    {
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      width: Math.ceil(width),
      height: Math.ceil(height),
      class: `picture ${kind}`,
      role: 'img',
      'aria-labelledby': `${ids.title} ${ids.desc}`,
      'font-family': FAMILY,
    },
    [
      shape('title', { id: ids.title }, [pictureTitle(picture)]),
      shape('desc', { id: ids.desc }, [pictureText(picture)]),
      shape('rect', {
        x: 0,
        y: 0,
        width: Math.ceil(width),
        height: Math.ceil(height),
        fill: '#fff',
      }),
      ...children,
    ],
  );
}
