import type { Project, Ties } from '../../core/document/types';
import { usualPins, usualTies } from '../../core/kinds/usualBridge';
import { ok, type Result } from '../../core/result';

/** What holds the strings. */
export type Hold = 'pins' | Ties['kind'];

/**
 * Pins, a tie block, or holes at the back edge, with usual figures and as wide apart as the strings. Without pins, locating
 * pins cannot go in their holes and move to the slot ends.
 */
export const chooseHold = (project: Project, hold: Hold): Result<Project> => {
  const { bridge, instrument } = project;
  const spread = instrument.spread.own;
  if (hold === 'pins') {
    const pins = bridge.pins ?? usualPins(spread);
    return ok({ ...project, bridge: { ...bridge, pins, ties: null } });
  }
  const site = bridge.locating.site === 'outer-pin-holes' ? 'slot-ends' : bridge.locating.site;
  const ties = bridge.ties?.kind === hold ? bridge.ties : usualTies(hold, spread);
  return ok({ ...project, bridge: { ...bridge, pins: null, ties, locating: { ...bridge.locating, site } } });
};
