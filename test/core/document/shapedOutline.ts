import type { ShapedOutline } from '../../../src/core/document/outlineTypes';
import type { Bridge } from '../../../src/core/document/types';

/** The outline of a bridge that a test knows to have a shape by dimensions. */
export const shapedOutline = ({ outline }: Pick<Bridge, 'outline'>): ShapedOutline => {
  if (outline.kind === 'drawn') throw new Error('The outline is drawn, not a shape.');
  return outline;
};
