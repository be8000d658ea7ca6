import { isConverted } from '../../../core/body/bodyHand';
import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { between, distance } from '../../../core/geom/points';
import { failed, ok, type Result } from '../../../core/result';
import { roundDecimal } from '../../../core/units/roundDecimal';
import { withBody } from './withBody';

/** A wire hole to start from, mm: common practice, no source. */
const DRILL = 2.5;
/** Its middle from the end of the slot, clear of a locating pin there. */
const FROM_END = 6;

/**
 * A wire hole near the bass end of the slot, in its middle, no wider than the slot; or none. Codes: body.none, and those of
 * slot and bridge when they could not be computed.
 */
export const chooseWireHole = (project: Project, wanted: boolean): Result<Project> =>
  withBody(project, (body) => {
    if (!wanted) return ok({ ...body, wireHole: null });
    if (body.wireHole !== null) return ok(body);
    const { slot, bridge } = createDerive()(project);
    if (!slot.ok || !bridge.ok) return failed([slot, bridge].flatMap((part) => (part.ok ? [] : part.issues)));
    const { treble, bass } = slot.value.ends;
    const { x, y } = between(bass, treble, Math.min(0.5, FROM_END / distance(bass, treble)));
    const side = isConverted(body, project.instrument.hand) ? 0 - x : x;
    const at = { x: roundDecimal(side, 2), y: roundDecimal(y, 2) };
    return ok({ ...body, wireHole: { at, diameter: Math.min(DRILL, project.bridge.slot.width) } });
  });
