import type { LengthField } from './fieldTypes';
import type { ShapeName } from './types';

/** A dimension of a bridge shape with the figure it starts from. */
export interface ShapeParameter extends LengthField {
  readonly name: string;
  readonly usual: number;
}

const parameter = (
  name: string,
  label: string,
  usual: number,
  min: number,
  max: number,
  help: string,
  source: string,
): ShapeParameter => ({
  kind: 'length',
  path: `bridge.outline.parameters.${name}`,
  name,
  label,
  usual,
  min,
  max,
  help,
  source,
});

const FROM_MEMORY = 'from memory';
const COMMON = 'common practice, no source';

/** The dimensions of each shape, in the order in which a maker would lay them out. */
export const SHAPE_PARAMETERS: Readonly<Record<ShapeName, readonly ShapeParameter[]>> = {
  belly: [
    parameter('length', 'Bridge length', 152.4, 40, 300, 'Over all, wing tip to wing tip.', `6 in: ${FROM_MEMORY}`),
    parameter(
      'wing',
      'Width at the wings',
      25.4,
      8,
      80,
      'Front edge to back edge, along a wing.',
      `1 in: ${FROM_MEMORY}`,
    ),
    parameter(
      'full',
      'Width at the belly',
      34.925,
      9,
      100,
      'Front edge to the back of the belly, on the centreline.',
      `1 3/8 to 1 1/2 in: ${FROM_MEMORY}`,
    ),
    parameter(
      'belly',
      'Belly, across',
      104,
      10,
      290,
      'Across the belly, from where it leaves one wing to where it meets the other.',
      COMMON,
    ),
    parameter('shoulder', 'Shoulder radius', 40, 1, 400, 'Radius of the hollow where wing runs into belly.', COMMON),
    parameter('corner', 'Corner radius', 2, 0, 20, 'At the wing tips; 0 for sharp corners.', COMMON),
  ],
  'tie-block': [
    parameter(
      'length',
      'Bridge length',
      190,
      40,
      300,
      'Over all, wing tip to wing tip.',
      `185 to 195 mm: ${FROM_MEMORY}`,
    ),
    parameter('full', 'Bridge width', 28, 8, 80, 'Front edge to back edge.', `27 to 30 mm: ${FROM_MEMORY}`),
    parameter(
      'block',
      'Tie block, across',
      80,
      20,
      160,
      'Between the inner ends of the wings.',
      `about 80 mm: ${FROM_MEMORY}`,
    ),
    parameter('corner', 'Corner radius', 0, 0, 20, 'At the wing tips; 0 for sharp corners.', COMMON),
  ],
  'small-ukulele': [
    parameter('length', 'Bridge length', 76.2, 20, 200, 'Over all.', '3 in: theamateurluthier.com, fall projects'),
    parameter(
      'full',
      'Bridge width',
      19.05,
      6,
      60,
      'Front edge to the back edge on the centreline.',
      '3/4 in: theamateurluthier.com, fall projects',
    ),
    parameter(
      'end',
      'Width at the ends',
      16,
      4,
      60,
      'Front edge to back edge at the ends; the back edge is one arc from end to end.',
      COMMON,
    ),
    parameter('corner', 'Corner radius', 1.5, 0, 15, 'At all four corners; 0 for sharp corners.', COMMON),
  ],
};

/** The dimensions that a shape starts from. */
export const usualParameters = (shape: ShapeName): Readonly<Record<string, number>> =>
  Object.fromEntries(SHAPE_PARAMETERS[shape].map(({ name, usual }) => [name, usual]));
