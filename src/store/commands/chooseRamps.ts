import type { Project } from '../../core/document/types';
import { fail, ok, type Result } from '../../core/result';

/** Ramps to begin with, mm; sources stand beside the fields. */
const USUAL = { length: 4, width: 1.6 } as const;

/** String ramps at the pin holes, or none. Codes: pins.none. */
export const chooseRamps = (project: Project, wanted: boolean): Result<Project> => {
  const { pins } = project.bridge;
  if (pins === null) return fail('bridge.pins', 'pins.none', 'Ramps lead to pin holes: this bridge has none.');
  const ramp = wanted ? (pins.ramp ?? USUAL) : null;
  return ok({ ...project, bridge: { ...project.bridge, pins: { ...pins, ramp } } });
};
