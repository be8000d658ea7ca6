import { closedSegments } from '../core/geom/closedSegments';
import { flatCorners } from '../core/geom/offset/flatCorners';
import { selfCrossing } from '../core/geom/offset/selfCrossing';
import { pathArea } from '../core/geom/pathArea';
import { pathBounds } from '../core/geom/pathBounds';
import { distance } from '../core/geom/points';
import type { Path } from '../core/geom/types';
import type { FoundOutline } from '../core/ports';
import { IMPORT_LIMITS } from './importLimits';

/** The longer side that a bridge may have, mm: from a small charango's to a bass's, with room; common practice, no source. */
export const OUTLINE_SIDE_MM = { least: 20, most: 400 } as const;

/** The longest line that an outline may have, mm: ten times that around a bridge; common practice, no source. */
const MOST_LENGTH_MM = 10_000;

/** Corners that an outline may have once its curves are cut into chords: one for each 0.05 mm around a bridge. */
const MOST_CORNERS = 20_000;

/** An outline that holds less of its box than this is a line drawn there and back. */
const HOLLOW = 1e-6;

const round = (mm: number): string => Number(mm.toPrecision(3)).toString();

/** Never shorter than the line itself, but for arcs, whose chords count. */
const controlLength = ({ start, segments }: Path): number => {
  let [length, from] = [0, start];
  for (const segment of segments) {
    const { to } = segment;
    length +=
      segment.kind === 'cubic'
        ? distance(from, segment.c1) + distance(segment.c1, segment.c2) + distance(segment.c2, to)
        : distance(from, to);
    from = to;
  }
  return length;
};

/** Why an outline cannot be taken, in the order in which a maker would see it; null when it can. */
const refusalOf = (path: Path, across: number, along: number, area: number, sized: boolean): string | null => {
  const longest = Math.max(across, along);
  if (!path.closed) {
    const end = path.segments.at(-1)?.to ?? path.start;
    return sized
      ? `It is open: its ends lie ${round(distance(end, path.start))} mm apart.`
      : 'It is open: its ends do not meet.';
  }
  if (sized && longest < OUTLINE_SIDE_MM.least)
    return `It is too small: ${round(longest)} mm over its longer side, expected ${OUTLINE_SIDE_MM.least} to ${OUTLINE_SIDE_MM.most} mm.`;
  if (sized && longest > OUTLINE_SIDE_MM.most)
    return `It is too large: ${round(longest)} mm over its longer side, expected ${OUTLINE_SIDE_MM.least} to ${OUTLINE_SIDE_MM.most} mm.`;
  if (path.segments.length > IMPORT_LIMITS.outlineSegments)
    return `It has ${path.segments.length} nodes, expected at most ${IMPORT_LIMITS.outlineSegments}: draw it with curves, or simplify it.`;
  const winding = 'It winds more than an outline can: simplify it.';
  if (controlLength(path) > MOST_LENGTH_MM) return winding;
  const corners = flatCorners(closedSegments(path));
  if (corners.length > MOST_CORNERS) return winding;
  const crossing = selfCrossing(corners);
  if (crossing === null) return area <= HOLLOW * longest * longest ? 'It encloses nothing.' : null;
  const { minX, minY } = pathBounds(path);
  return sized
    ? `It crosses or touches itself, ${round(crossing.x - minX)} mm from its left and ${round(crossing.y - minY)} mm from its top.`
    : 'It crosses or touches itself.';
};

/** The path with its size, mm, and whether it can be taken. Its numbers must be sound. sized: its scale is known. */
export const judgeOutline = (path: Path, sized: boolean): FoundOutline => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  const [across, along] = [maxX - minX, maxY - minY];
  const area = path.closed ? pathArea(path) : 0;
  return { path, across, along, area, refusal: refusalOf(path, across, along, area, sized) };
};
