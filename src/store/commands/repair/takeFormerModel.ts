import { createDerive } from '../../../core/derive/createDerive';
import { MOST_FORMER_HOLES } from '../../../core/document/repairFields';
import type { Project } from '../../../core/document/types';
import { eachFrom, footprintFrom } from '../../../core/repair/fromBridge';
import { fail, ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

/**
 * The bridge of another project becomes the old one: its footprint where it stands there from the nut, and its pin holes,
 * each by its place from the front edge. Codes: repair.none, repair.holesFull, and those of the model's bridge when it could
 * not be computed.
 */
export const takeFormerModel = (project: Project, model: Project): Result<Project> =>
  withRepair(project, (repair) => {
    const { bridge } = createDerive()(model);
    if (!bridge.ok) return bridge;
    const { pins } = bridge.value;
    if (pins.length > MOST_FORMER_HOLES)
      return fail('repair.holes', 'repair.holesFull', `There is room for ${MOST_FORMER_HOLES} old holes.`);
    return ok({
      ...repair,
      footprint: footprintFrom(model.bridge, bridge.value),
      holes: pins.length === 0 ? null : { from: 'front', ...eachFrom(bridge.value) },
    });
  });
