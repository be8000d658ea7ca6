import { circlePath } from '../geom/circlePath';
import type { Path } from '../geom/types';
import type { BridgePlace } from './types';

/**
 * The holes that leave no sole to glue: pins, and locating pins, which are drilled through the bridge into the top. A
 * stopped slot costs none.
 */
export const throughHoles = ({ pins, locating }: Pick<BridgePlace, 'pins' | 'locating'>): readonly Path[] =>
  [...pins, ...locating].map(({ centre, diameter }) => circlePath(centre, diameter / 2));
