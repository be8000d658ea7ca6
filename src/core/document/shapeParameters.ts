import { PINNED_SHAPE_PARAMETERS } from './pinnedShapeParameters';
import { COMMON, FROM_MEMORY, type ShapeParameter, shapeParameter } from './shapeParameter';
import type { ShapeName } from './types';

/** The dimensions of each shape, in the order in which a maker would lay them out. */
export const SHAPE_PARAMETERS: Readonly<Record<ShapeName, readonly ShapeParameter[]>> = {
  ...PINNED_SHAPE_PARAMETERS,
  'tie-block': [
    shapeParameter(
      'length',
      'Bridge length',
      190,
      40,
      300,
      'Over all, wing tip to wing tip.',
      `185 to 195 mm: ${FROM_MEMORY}`,
    ),
    shapeParameter('full', 'Bridge width', 28, 8, 80, 'Front edge to back edge.', `27 to 30 mm: ${FROM_MEMORY}`),
    shapeParameter(
      'block',
      'Tie block, across',
      80,
      20,
      160,
      'Between the inner ends of the wings.',
      `about 80 mm: ${FROM_MEMORY}`,
    ),
    shapeParameter('corner', 'Corner radius', 0, 0, 20, 'At the wing tips; 0 for sharp corners.', COMMON),
  ],
  'small-ukulele': [
    shapeParameter('length', 'Bridge length', 76.2, 20, 200, 'Over all.', '3 in: theamateurluthier.com, fall projects'),
    shapeParameter(
      'full',
      'Bridge width',
      19.05,
      6,
      60,
      'Front edge to the back edge on the centreline.',
      '3/4 in: theamateurluthier.com, fall projects',
    ),
    shapeParameter(
      'end',
      'Width at the ends',
      16,
      4,
      60,
      'Front edge to back edge at the ends; the back edge is one arc from end to end.',
      COMMON,
    ),
    shapeParameter('corner', 'Corner radius', 1.5, 0, 15, 'At all four corners; 0 for sharp corners.', COMMON),
  ],
};

/** The dimensions that a shape starts from. */
export const usualParameters = (shape: ShapeName): Readonly<Record<string, number>> =>
  Object.fromEntries(SHAPE_PARAMETERS[shape].map(({ name, usual }) => [name, usual]));
