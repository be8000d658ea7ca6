import { ok, type Result } from '../../result';
import type { Path, Point } from '../types';
import { checkOutline } from './checkOutline';
import { clockwiseSegments } from './clockwiseSegments';
import { flatCorners } from './flatCorners';
import { middleOf, toUnits } from './libraryUnits';
import { loadLibrary } from './loadLibrary';

/** Corners in the library's units from `middle`: outlines clockwise as seen on the page, holes in them the other way. */
export interface Difference {
  readonly left: readonly (readonly Point[])[];
  readonly middle: Point;
}

/**
 * What lies inside any of some closed outlines and outside of every hole; curves as chords that keep their area. Codes:
 * those of offsetPath on the paths themselves, and offset.notLoaded.
 */
export async function differenceOf(outlines: readonly Path[], holes: readonly Path[]): Promise<Result<Difference>> {
  for (const path of [...outlines, ...holes]) {
    const checked = checkOutline(path, 0);
    if (!checked.ok) return checked;
  }
  const [first] = outlines;
  if (first === undefined) return ok({ left: [], middle: { x: 0, y: 0 } });
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
  return ok({ left, middle });
}
