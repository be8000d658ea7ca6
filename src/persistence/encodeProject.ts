import * as v from 'valibot';
import type { Project } from '../core/document/types';
import { PROJECT_SCHEMA } from './projectSchema';

const sorted = (figures: Readonly<Record<string, number>>): Record<string, number> =>
  Object.fromEntries(Object.entries(figures).sort(([one], [other]) => (one < other ? -1 : 1)));

/**
 * A project as the text of a file: JSON with its keys always in the same order, ending in a line feed. Throws when the
 * project is not one that `decodeProject` would take.
 */
export const encodeProject = (project: Project): string => {
  const { compensation, bridge, ...rest } = v.parse(PROJECT_SCHEMA, project);
  const ordered: Project = {
    ...rest,
    compensation: { ...compensation, own: sorted(compensation.own) },
    bridge: { ...bridge, outline: { ...bridge.outline, parameters: sorted(bridge.outline.parameters) } },
    doubts: sorted(rest.doubts),
    limits: sorted(rest.limits),
  };
  return `${JSON.stringify(ordered, null, 2)}\n`;
};
