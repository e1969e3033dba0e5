import type { CavitySection } from './effectiveThickness.ts';

/**
 * Aspect of the plastic below a fill mark of an open cavity, as `cavityShapeFactor` takes it: twice its height over the
 * width of its free surface.
 *
 * Above its middle an ellipse closes over the plastic; there the whole section's depth over width stands for it.
 *
 * @param mark - height of the free surface as a share of the depth, 0 < mark <= 1
 */
export function openAspect({ profile, width, depth }: CavitySection, mark: number): number {
  const height = mark * depth;
  switch (profile) {
    case 'box':
      return (2 * height) / width;
    case 'V':
      return (2 * depth) / width;
    case 'half-round':
      return (2 * height) / (width * chordShare(mark));
    case 'ellipse':
      return mark >= 0.5 ? depth / width : (2 * height) / (width * chordShare(2 * mark));
  }
}

/** Width of a half ellipse at a height over its full width, the height as a share of its upright half. */
function chordShare(height: number): number {
  return Math.sqrt(height * (2 - height));
}
