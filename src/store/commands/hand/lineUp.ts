import type { Project } from '../../../core/document/types';
import type { PartName } from '../../../core/drawing/types';
import type { Point } from '../../../core/geom/types';
import { fail, type Result } from '../../../core/result';
import { freePlaces } from './freePlaces';
import { placeParts } from './placeParts';

/** level: as far from the front edge as the first; straight: as far out; centreline: onto it. */
export type LineUpWay = 'level' | 'straight' | 'centreline';

const lined = (way: LineUpWay, { x, y }: Point, first: Point): Point => {
  switch (way) {
    case 'level':
      return { x, y: first.y };
    case 'straight':
      return { x: first.x, y };
    case 'centreline':
      return { x: 0, y };
  }
};

/**
 * Parts that may lie anywhere brought into line with the first of them, or onto the centreline. Codes: hand.few when there
 * is nothing to bring into line, those of placeParts.
 */
export const lineUp = (project: Project, parts: readonly PartName[], way: LineUpWay): Result<Project> => {
  const places = [...freePlaces(project, parts)];
  const [first] = places;
  if (first === undefined || (places.length < 2 && way !== 'centreline'))
    return fail('', 'hand.few', 'Choose two or more nodes or free locating pins to bring them into line.');
  return placeParts(project, new Map(places.map(([part, at]) => [part, lined(way, at, first[1])])));
};
