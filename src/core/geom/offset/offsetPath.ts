import { fail, ok, type Result } from '../../result';
import { pathArea } from '../pathArea';
import { pathBounds } from '../pathBounds';
import { distance as lengthBetween } from '../points';
import { signedArea } from '../signedArea';
import { NO_AREA_MM2 } from '../tolerances';
import type { Path, Point } from '../types';
import { checkOutline } from './checkOutline';
import { clockwiseSegments } from './clockwiseSegments';
import { fitArcs } from './fitArcs';
import { FLAT_STRAY_MM, flatCorners } from './flatCorners';
import { fromUnits, middleOf, toUnits, UNITS_PER_MM } from './libraryUnits';
import { loadLibrary } from './loadLibrary';
import { offsetArcs } from './offsetArcs';
import { selfCrossing } from './selfCrossing';

/**
 * The outline at a distance (mm) from a closed one, which may run either way: + grows, − shrinks, with round joins. It may
 * fall into several outlines or vanish (none). Outlines run clockwise as seen on the page, holes the other way, so that
 * signed areas add up; each ends at its start. Beside lines stand lines, beside arcs and round corners true arcs, beside
 * cubics chords of at most 0.4 µm stray. Area within 0.02 mm² and distance within 2 µm at the size of a bridge.
 *
 * Codes: path.notFinite, path.arcRadii and path.arcEnds as validatePath tells them, path.open, path.noArea, path.tooLarge
 * (beyond 10 m), path.crossing (crosses or touches itself), offset.distance (not finite, or beyond 1 m), offset.notLoaded
 * (the part of the program that offsets could not be fetched).
 */
export async function offsetPath(path: Path, distance: number): Promise<Result<readonly Path[]>> {
  const checked = checkOutline(path, distance);
  if (!checked.ok) return checked;
  const started = clockwiseSegments(path);
  const { minX, minY, maxX, maxY } = pathBounds(path);
  const middle = middleOf(path);
  const corners = withoutRepeats(flatCorners(started).map((corner) => toUnits(corner, middle)));
  const crossing = selfCrossing(corners);
  if (crossing !== null) {
    const { x, y } = fromUnits(crossing, middle);
    const place = `${x.toFixed(3)}, ${y.toFixed(3)}`;
    return fail('', 'path.crossing', `Expected an outline that does not cross or touch itself: it does near ${place}.`);
  }
  if (pathArea(path) <= NO_AREA_MM2) return fail('', 'path.noArea', 'Expected an outline that encloses an area.');
  // No point inside lies farther from the outline than half of its lesser side.
  if (-distance >= Math.min(maxX - minX, maxY - minY) / 2) return ok([]);
  const library = await loadLibrary();
  if (!library.ok) return library;
  const { ClipperOffset, JoinType, EndType } = library.value;
  const offset = new ClipperOffset(undefined, FLAT_STRAY_MM * UNITS_PER_MM);
  offset.addPath(corners, JoinType.Round, EndType.Polygon);
  const outlines: Point[][] = [];
  offset.execute(distance * UNITS_PER_MM, outlines);
  const arcs = offsetArcs(started, distance);
  return ok(
    outlines.flatMap((outline) => {
      const flat = outline.map((corner) => fromUnits(corner, middle));
      const fitted = fitArcs(flat, arcs);
      return isThin(fitted, flat) ? [] : [fitted];
    }),
  );
}

const withoutRepeats = (corners: readonly Point[]): Point[] =>
  corners.filter((corner, index) => {
    const before = corners.at(index - 1);
    return before === undefined || corner.x !== before.x || corner.y !== before.y;
  });

/** Whether an outline is thinner than flattening strays: what is left where nothing should be. */
function isThin(path: Path, corners: readonly Point[]): boolean {
  const around = corners.reduce(
    (sum, corner, index) => sum + lengthBetween(corner, corners.at(index - 1) ?? corner),
    0,
  );
  return Math.abs(signedArea(path)) < FLAT_STRAY_MM * around;
}
