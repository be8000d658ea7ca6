import { COMMON, FROM_MEMORY, type ShapeParameter, shapeParameter } from './shapeParameter';
import type { ShapeName } from './types';

const TIP_TO_TIP = 'Over all, wing tip to wing tip.';
const SIX_INCHES = `6 in: ${FROM_MEMORY}`;
/** An outline drawn for Saddlemark, after no instrument. */
const OWN_FORM = 'our own form, no source';

const length = shapeParameter('length', 'Bridge length', 152.4, 40, 300, TIP_TO_TIP, SIX_INCHES);
const width = (source: string) =>
  shapeParameter('full', 'Bridge width', 25.4, 8, 80, 'Front edge to back edge.', source);

/** Belly bridges, the belly at that edge of the bridge. */
const bellyRows = (edge: 'front' | 'back'): readonly ShapeParameter[] => [
  length,
  shapeParameter(
    'wing',
    'Width at the wings',
    25.4,
    8,
    80,
    'Front edge to back edge, along a wing.',
    `1 in: ${FROM_MEMORY}`,
  ),
  shapeParameter(
    'full',
    'Width at the belly',
    34.925,
    9,
    100,
    `${edge === 'back' ? 'Front' : 'Back'} edge to the ${edge} of the belly, on the centreline.`,
    `1 3/8 to 1 1/2 in: ${FROM_MEMORY}`,
  ),
  shapeParameter(
    'belly',
    'Belly, across',
    104,
    10,
    290,
    'Across the belly, from where it leaves one wing to where it meets the other.',
    COMMON,
  ),
  shapeParameter('shoulder', 'Shoulder radius', 40, 1, 400, 'Radius of the hollow where wing runs into belly.', COMMON),
  shapeParameter('corner', 'Corner radius', 2, 0, 20, 'At the wing tips; 0 for sharp corners.', COMMON),
];

/** The dimensions of the shapes that usually carry bridge pins. */
export const PINNED_SHAPE_PARAMETERS: Readonly<
  Record<Exclude<ShapeName, 'tie-block' | 'small-ukulele'>, readonly ShapeParameter[]>
> = {
  rectangular: [
    length,
    width(`1 in: ${FROM_MEMORY}`),
    shapeParameter('corner', 'Corner radius', 0, 0, 20, 'At all four corners; 0 for sharp corners.', COMMON),
  ],
  belly: bellyRows('back'),
  'belly-nut': bellyRows('front'),
  'pyramid-tip': [
    length,
    width(`1 in: ${FROM_MEMORY}; 7/8 in in the 1890s: leavingthisworld.com, pyramid guitar bridges`),
    shapeParameter(
      'pyramid',
      'Pyramid, along the bridge',
      19.05,
      4,
      140,
      'Wing tip to the foot of its pyramid.',
      `about 3/4 in: ${FROM_MEMORY}`,
    ),
  ],
  'double-sided': [
    shapeParameter(
      'length',
      'Bridge length',
      190.5,
      40,
      300,
      TIP_TO_TIP,
      '7 1/2 in: premierguitar.com, new sound from an old guitar',
    ),
    shapeParameter(
      'full',
      'Width at the centre',
      34.925,
      9,
      100,
      'Front edge to back edge on the centreline, where the bridge is widest.',
      `1 3/8 in: ${FROM_MEMORY}`,
    ),
    shapeParameter('wing', 'Width at the wings', 19, 8, 80, 'Front edge to back edge, along a wing.', OWN_FORM),
    shapeParameter(
      'waist',
      'Waist span',
      140,
      10,
      290,
      'From where the wing of one side begins to narrow no more, across to the other.',
      OWN_FORM,
    ),
    shapeParameter('shoulder', 'Shoulder radius', 60, 1, 400, 'Radius of the hollow on each edge.', OWN_FORM),
    shapeParameter(
      'corner',
      'Tip radius',
      8.5,
      0,
      40,
      'At the corners of the wing tips; 0 for sharp corners.',
      OWN_FORM,
    ),
  ],
};
