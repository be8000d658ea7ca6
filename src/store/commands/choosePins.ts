import type { Project } from '../../core/document/types';
import { usualPins } from '../../core/kinds/usualBridge';
import { ok, type Result } from '../../core/result';

/** A bridge with pins or without. Without pins, locating pins cannot go in their holes and move to the slot ends. */
export const choosePins = (project: Project, wanted: boolean): Result<Project> => {
  const { bridge, instrument } = project;
  if (wanted) return ok({ ...project, bridge: { ...bridge, pins: bridge.pins ?? usualPins(instrument.spread.own) } });
  return ok({ ...project, bridge: { ...bridge, pins: null, locating: { ...bridge.locating, site: 'slot-ends' } } });
};
