import * as v from 'valibot';
import type { Build } from '../core/document/buildTypes';
import type { Outline } from '../core/document/outlineTypes';
import type { Project } from '../core/document/types';
import { PROJECT_SCHEMA } from './projectSchema';

const sorted = <Value>(figures: Readonly<Record<string, Value>>): Record<string, Value> =>
  Object.fromEntries(Object.entries(figures).sort(([one], [other]) => (one < other ? -1 : 1)));

/** A shape's dimensions in their order; a drawn outline is in the schema's. */
const outlineInOrder = (outline: Outline): Outline =>
  outline.kind === 'drawn' ? outline : { ...outline, parameters: sorted(outline.parameters) };

const buildInOrder = (build: Build): Build => ({
  ...build,
  steps: sorted(build.steps),
  stringUps: build.stringUps.map((each) => ({
    ...each,
    cents: sorted(each.cents),
    predicted: sorted(each.predicted),
    stood: sorted(each.stood),
  })),
});

/**
 * A project as the text of a file: JSON with its keys always in the same order, ending in a line feed. Throws when the
 * project is not one that `decodeProject` would take.
 */
export const encodeProject = (project: Project): string => {
  const { compensation, bridge, repair, ...rest } = v.parse(PROJECT_SCHEMA, project);
  const ordered: Project = {
    ...rest,
    compensation: {
      ...compensation,
      own: sorted(compensation.own),
      learned: compensation.learned && { ...compensation.learned, byString: sorted(compensation.learned.byString) },
    },
    bridge: { ...bridge, outline: outlineInOrder(bridge.outline) },
    repair: repair && {
      ...repair,
      footprint: { ...repair.footprint, outline: outlineInOrder(repair.footprint.outline) },
    },
    doubts: sorted(rest.doubts),
    limits: sorted(rest.limits),
    build: rest.build && buildInOrder(rest.build),
  };
  return `${JSON.stringify(ordered, null, 2)}\n`;
};
