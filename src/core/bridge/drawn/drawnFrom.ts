import type { DrawnOutline, ShapedOutline } from '../../document/outlineTypes';
import { ok, type Result } from '../../result';
import { footprintOf } from '../footprintOf';

/**
 * The outline of a shape as one that is drawn freely: the very same path, and symmetric, as every shape is. Lines that a
 * shape has on its face are not part of it. Codes: those of footprintOf.
 */
export function drawnFrom(outline: ShapedOutline): Result<DrawnOutline> {
  const footprint = footprintOf(outline);
  return footprint.ok ? ok({ kind: 'drawn', path: footprint.value.outline, symmetric: true }) : footprint;
}
