import type { Outline, ShapedOutline } from '../document/outlineTypes';
import { usualParameters } from '../document/shapeParameters';
import { validatePath } from '../geom/validatePath';
import { fail, type Result } from '../result';
import { drawnFootprint } from './drawn/drawnFootprint';
import { type BellyParameters, belly } from './shapes/belly';
import { bellyNut } from './shapes/bellyNut';
import { type DoubleSidedParameters, doubleSided } from './shapes/doubleSided';
import { type PyramidTipParameters, pyramidTip } from './shapes/pyramidTip';
import { type RectangularParameters, rectangular } from './shapes/rectangular';
import { type SmallUkuleleParameters, smallUkulele } from './shapes/smallUkulele';
import { type TieBlockParameters, tieBlock } from './shapes/tieBlock';
import type { Footprint } from './types';

const shaped = (outline: ShapedOutline): Result<Footprint> => {
  const parameters: unknown = { ...usualParameters(outline.shape), ...outline.parameters };
  switch (outline.shape) {
    case 'rectangular':
      return rectangular(parameters as RectangularParameters);
    case 'belly':
      return belly(parameters as BellyParameters);
    case 'belly-nut':
      return bellyNut(parameters as BellyParameters);
    case 'pyramid-tip':
      return pyramidTip(parameters as PyramidTipParameters);
    case 'tie-block':
      return tieBlock(parameters as TieBlockParameters);
    case 'small-ukulele':
      return smallUkulele(parameters as SmallUkuleleParameters);
    case 'double-sided':
      return doubleSided(parameters as DoubleSidedParameters);
  }
};

/**
 * The footprint of an outline in its own frame: origin where the front edge crosses the centreline, y + toward the tail.
 * Codes: those of the shape or of drawnFootprint, and outline.degenerate where a rounding is too small to be drawn.
 */
export const footprintOf = (outline: Outline): Result<Footprint> => {
  if (outline.kind === 'drawn') return drawnFootprint(outline);
  const shape = shaped(outline);
  if (!shape.ok || validatePath(shape.value.outline).ok) return shape;
  return fail(
    'bridge.outline.parameters.corner',
    'outline.degenerate',
    'With these dimensions a rounding of the outline shrinks to nothing; a corner radius of 0 gives sharp corners.',
  );
};
