import type { PinnedDimension } from '../../../core/document/dimensionTypes';
import { MOST_DIMENSIONS } from '../../../core/document/mostDimensions';
import type { Project } from '../../../core/document/types';
import type { Wanted } from '../../../core/drawing/measure/measuredOf';
import { fail, ok, type Result } from '../../../core/result';

const freeId = (dimensions: readonly PinnedDimension[]): string => {
  const taken = new Set(dimensions.map(({ id }) => id));
  let number = dimensions.length + 1;
  while (taken.has(`d${number}`)) number += 1;
  return `d${number}`;
};

/** One more dimension on the drawing, after those that are there. Codes: dimensions.full. */
export const pinDimension = (project: Project, wanted: Wanted): Result<Project> => {
  const { dimensions } = project;
  if (dimensions.length >= MOST_DIMENSIONS)
    return fail(
      'dimensions',
      'dimensions.full',
      `There is room for ${MOST_DIMENSIONS} dimensions; take one away first.`,
    );
  return ok({ ...project, dimensions: [...dimensions, { ...wanted, id: freeId(dimensions) }] });
};
