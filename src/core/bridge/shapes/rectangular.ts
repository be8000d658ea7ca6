import { fail, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { roundedRectangle } from './roundedRectangle';

export interface RectangularParameters {
  readonly length: number;
  readonly full: number;
  readonly corner: number;
}

/** Rectangular bridge, in the footprint frame. Code: rectangular.corner (corners that do not fit on an end or an edge). */
export const rectangular = ({ length, full, corner }: RectangularParameters): Result<Footprint> =>
  corner > full / 2 || corner > length / 2
    ? fail(
        'bridge.outline.parameters.corner',
        'rectangular.corner',
        'The corner radius is at most half the bridge width and half the bridge length.',
      )
    : ok(roundedRectangle(length, full, corner));
