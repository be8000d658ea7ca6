import { pathArea } from '../core/geom/pathArea';
import { pathBounds } from '../core/geom/pathBounds';
import type { Path } from '../core/geom/types';
import { validatePath } from '../core/geom/validatePath';
import type { FoundOutline } from '../core/ports';
import { chainPieces } from './chainPieces';
import { IMPORT_LIMITS } from './importLimits';
import { isFinitePath } from './isFinitePath';
import { judgeOutline } from './judgeOutline';
import { mapPath } from './mapPath';
import { scaled } from './matrix';
import { tidyPath } from './tidyPath';

/** Two paths drawn over one another, to this many mm, are one. */
const SAME_MM = 0.001;

/** What tells a path from others, whichever way it is run. */
const keyOf = (path: Path): string => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  const end = path.segments.at(-1)?.to ?? path.start;
  const ends = path.closed ? [pathArea(path)] : [path.start.x + end.x, path.start.y + end.y, path.segments.length];
  const kinds = path.segments.length === 1 ? path.segments[0]?.kind : '';
  return [kinds, ...[minX, minY, maxX, maxY, ...ends].map((value) => Math.round(value / SAME_MM))].join(' ');
};

const once = (paths: readonly Path[]): Path[] =>
  [...new Map([...paths].reverse().map((path) => [keyOf(path), path])).values()].reverse();

/** How much of the page a path takes, for putting the large ones first; an open one counts by its box. */
const weight = (path: Path): number => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  return path.closed ? pathArea(path) : ((maxX - minX) * (maxY - minY)) / 2;
};

/**
 * The outlines of pieces drawn at a scale (mm to one of their units): loose pieces joined, doubles dropped, those that can
 * be taken first, the largest first. Only the largest are looked at closely; `more` counts the others.
 */
export const outlinesAt = (
  pieces: readonly Path[],
  perUnit: number,
  sized: boolean,
): { readonly outlines: readonly FoundOutline[]; readonly more: number } => {
  // A drawing that says how small it is, and lies far away, may end up where numbers no longer tell neighbours apart.
  const sound = (path: Path): boolean => path.segments.length > 0 && validatePath(path).ok && isFinitePath(path);
  const tidy = once(pieces.map((piece) => tidyPath(mapPath(piece, scaled(perUnit, perUnit)))).filter(sound));
  const open = tidy.filter(({ closed }) => !closed);
  const joined = chainPieces(open).map(tidyPath).filter(sound);
  const all = once([...tidy.filter(({ closed }) => closed), ...joined])
    .map((path) => ({ path, weight: weight(path) }))
    .sort((one, other) => other.weight - one.weight);
  const judged = all.slice(0, IMPORT_LIMITS.listed).map(({ path }) => judgeOutline(path, sized));
  const outlines = [
    ...judged.filter(({ refusal }) => refusal === null),
    ...judged.filter(({ refusal }) => refusal !== null),
  ];
  return { outlines, more: all.length - judged.length };
};
