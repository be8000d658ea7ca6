import { ok, type Result } from '../../result';
import type { Path, Point } from '../types';
import { checkOutline } from './checkOutline';
import { clockwiseSegments } from './clockwiseSegments';
import { flatCorners } from './flatCorners';
import { middleOf, toUnits, UNITS_PER_MM } from './libraryUnits';
import { loadLibrary } from './loadLibrary';

/**
 * The area inside any of some closed outlines that lies outside of every hole, mm²: holes may overlap one another and
 * stick out. All may run either way. Within 0.02 mm² at the size of a bridge.
 *
 * Codes: those of offsetPath on the paths themselves, and offset.notLoaded.
 */
export async function areaWithout(outlines: readonly Path[], holes: readonly Path[]): Promise<Result<number>> {
  for (const path of [...outlines, ...holes]) {
    const checked = checkOutline(path, 0);
    if (!checked.ok) return checked;
  }
  const [first] = outlines;
  if (first === undefined) return ok(0);
  const library = await loadLibrary();
  if (!library.ok) return library;
  const { Clipper64, ClipType, FillRule } = library.value;
  const middle = middleOf(first);
  const flat = (paths: readonly Path[]): Point[][] =>
    paths.map((path) => flatCorners(clockwiseSegments(path)).map((corner) => toUnits(corner, middle)));
  const difference = new Clipper64();
  difference.addSubject(flat(outlines));
  difference.addClip(flat(holes));
  const left: Point[][] = [];
  difference.execute(ClipType.Difference, FillRule.NonZero, left);
  return ok(left.reduce((sum, corners) => sum + polygonArea(corners), 0) / UNITS_PER_MM ** 2);
}

/** The area of a polygon, + clockwise as seen on the page; counted from its first corner, where rounding is least. */
const polygonArea = (corners: readonly Point[]): number => {
  const from = corners[0] ?? { x: 0, y: 0 };
  return corners.reduce((sum, corner, index) => {
    const before = corners.at(index - 1) ?? corner;
    return sum + ((before.x - from.x) * (corner.y - from.y) - (corner.x - from.x) * (before.y - from.y)) / 2;
  }, 0);
};
