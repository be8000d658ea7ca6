import type { Project, ShapeName } from '../../core/document/types';
import { usualBridge } from '../../core/kinds/usualBridge';
import { ok, type Result } from '../../core/result';

/**
 * A bridge shape with its usual dimensions. Width, ends and crown of the slot stay: they follow the saddle in hand; so do
 * the rim and the wood, and from pins to pins the pin and its reamer. String holes are spaced as the strings.
 */
export const chooseShape = (project: Project, shape: ShapeName): Result<Project> => {
  const { rim, density, slot, pins, sole, cutting } = project.bridge;
  const { width, ends, crown } = slot;
  const usual = usualBridge(shape);
  const keptPins = pins && usual.pins && { ...usual.pins, taper: pins.taper, underHead: pins.underHead };
  return ok({
    ...project,
    bridge: {
      ...usual,
      slot: { ...usual.slot, width, ends, crown },
      pins: keptPins ?? usual.pins,
      ties: usual.ties && { ...usual.ties, spread: project.instrument.spread.own },
      rim,
      density,
      sole,
      cutting,
    },
  });
};
