import type { PlainElement } from '../../elements/plainElement.ts';
import { shape } from '../../elements/shape.ts';

/** How large a picture is drawn [px]. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** What a picture is called, and what it says to whoever does not see it. */
interface PictureTexts {
  /** Class of the picture, and part of the ids in it */
  readonly kind: string;
  readonly title: string;
  readonly text: string;
}

const FAMILY = 'Arial, Helvetica, Liberation Sans, sans-serif';

/** The picture as a whole: an image with its title and its text alternative, white behind. */
export function pictureRoot(
  { kind, title, text }: PictureTexts,
  { width, height }: PictureSize,
  children: readonly PlainElement[],
): PlainElement {
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
      shape('title', { id: ids.title }, [title]),
      shape('desc', { id: ids.desc }, [text]),
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
