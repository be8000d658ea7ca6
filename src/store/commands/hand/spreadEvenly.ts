import type { Project } from '../../../core/document/types';
import type { PartName } from '../../../core/drawing/types';
import { fail, type Result } from '../../../core/result';
import { freePlaces } from './freePlaces';
import { placeParts } from './placeParts';

/**
 * Parts that may lie anywhere spread evenly between the two outermost of them, across the centreline (x) or along it (y).
 * Codes: hand.few for fewer than three, those of placeParts.
 */
export const spreadEvenly = (project: Project, parts: readonly PartName[], along: 'x' | 'y'): Result<Project> => {
  const places = [...freePlaces(project, parts)].sort(([, one], [, other]) => one[along] - other[along]);
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || places.length < 3)
    return fail('', 'hand.few', 'Choose three or more nodes to spread them evenly.');
  const [from, to] = [first[1][along], last[1][along]];
  const steps = places.length - 1;
  return placeParts(
    project,
    new Map(places.map(([part, at], index) => [part, { ...at, [along]: from + ((to - from) * index) / steps }])),
  );
};
