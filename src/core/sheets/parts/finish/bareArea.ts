import type { Path } from '../../../geom/types';
import { fail, ok, type Result } from '../../../result';
import type { SheetContext } from '../types';

/** The footprint, and the outlines of what is cleared of finish beneath it: the footprint itself without a rim. Instrument frame. */
export interface BareArea {
  readonly outline: Path;
  readonly bare: readonly Path[];
}

/**
 * Which part of the top is kept or made bare for the glue. Codes: those of the bridge, sheet.finishUnknown (the areas could
 * not be had), sheet.rimTakesAll.
 */
export const bareArea = ({ project, derived, areas }: SheetContext): Result<BareArea> => {
  const { bridge } = derived;
  if (!bridge.ok) return bridge;
  const { outline } = bridge.value.footprint;
  if (project.bridge.rim === 0) return ok({ outline, bare: [outline] });
  if (areas === null)
    return fail('bridge.rim', 'sheet.finishUnknown', 'The line of the finish under the rim could not be computed.');
  if (areas.finishLine.length === 0)
    return fail(
      'bridge.rim',
      'sheet.rimTakesAll',
      'The finish left under the rim takes the whole footprint: nothing would be glued. Expected a narrower rim.',
    );
  return ok({ outline, bare: areas.finishLine });
};
