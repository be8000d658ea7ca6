import type { Anchor, PinnedDimension } from '../../../core/document/dimensionTypes';
import type { DrawnOutline } from '../../../core/document/outlineTypes';
import type { Locating, Project } from '../../../core/document/types';
import { centrelineCrossings } from '../../../core/geom/edit/centrelineCrossings';
import { shiftPath } from '../../../core/geom/edit/shiftPath';
import { add } from '../../../core/geom/points';
import type { Point } from '../../../core/geom/types';
import { fail, ok, type Result } from '../../../core/result';

/** A front edge nearer to 0 than this lies there, mm: rounding alone. */
const SEATED_MM = 1e-9;

/**
 * The project with another outline, given in the footprint frame as it was. The frame's origin is where the front edge
 * crosses the centreline: when that is no longer at y 0, the outline is shifted so that it is, and everything else that is
 * told from there is shifted alike (the distance from the front edge to the slot, free locating pins, fixed points of pinned
 * dimensions). So the saddle, the slot and what follows them stay where they are on the instrument, and the outline lies
 * about them as it was drawn. Code: outline.offCentre.
 */
export function seatOutline(project: Project, outline: DrawnOutline): Result<Project> {
  const crossings = centrelineCrossings(outline.path);
  if (crossings.length === 0)
    return fail('bridge.outline', 'outline.offCentre', 'The outline must cross the centreline of the instrument.');
  const front = Math.min(...crossings.map(({ y }) => y));
  const { bridge } = project;
  if (Math.abs(front) <= SEATED_MM) return ok({ ...project, bridge: { ...bridge, outline } });
  const by: Point = { x: 0, y: -front };
  return ok({
    ...project,
    bridge: {
      ...bridge,
      outline: { ...outline, path: shiftPath(outline.path, by) },
      slot: { ...bridge.slot, fromFront: bridge.slot.fromFront - front },
      locating: shiftedPins(bridge.locating, by),
    },
    dimensions: project.dimensions.map((dimension) => shiftedDimension(dimension, by)),
  });
}

function shiftedPins(locating: Locating, by: Point): Locating {
  const { points } = locating;
  if (points === null) return locating;
  return { ...locating, points: { treble: add(points.treble, by), bass: add(points.bass, by) } };
}

function shiftedDimension(dimension: PinnedDimension, by: Point): PinnedDimension {
  if (dimension.kind === 'gap') return dimension;
  const shifted = (anchor: Anchor): Anchor =>
    anchor.kind === 'point' ? { ...anchor, at: add(anchor.at, by) } : anchor;
  const ends = { from: shifted(dimension.from), to: shifted(dimension.to) };
  return dimension.kind === 'angle'
    ? { ...dimension, ...ends, corner: shifted(dimension.corner) }
    : { ...dimension, ...ends };
}
