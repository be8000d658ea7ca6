import { fail, ok, type Result } from '../../result';
import { distance } from '../points';
import { signedArea } from '../signedArea';
import type { Path, Segment } from '../types';
import { arcOfRadius, arcOfSagitta } from './arcBetween';
import { editBothSides } from './editBothSides';
import { type Loop, nodeOf, pathOf, segmentOf } from './loop';

/** To which side of its chord an arc bulges: away from what the outline encloses, or into it. */
export type Bulge = 'outward' | 'inward';

/** Rounding allowed when a radius is exactly half of the chord, mm. */
const HALF_CHORD_MM = 1e-9;

/**
 * Segment `index` made the true arc of a radius, mm, that turns by half a circle at most. Without `bulge` an arc keeps its
 * side and anything else bulges outward. When symmetric, the partner too.
 *
 * Codes: outline.radius (not more than 0), outline.radiusSmall (the ends lie farther apart than twice the radius), those of
 * editBothSides.
 */
export function setRadius(path: Path, index: number, radius: number, bulge?: Bulge, symmetric = false): Result<Path> {
  const edited = editBothSides(path, symmetric, { kind: 'segment', index }, (loop, segment) =>
    withArc(loop, segment, { radius }, bulge),
  );
  return edited.ok ? ok(edited.value.path) : edited;
}

/** How an arc is told: by its radius, or by how far its middle stands off its chord; mm. */
export type ArcSize = { readonly radius: number } | { readonly sagitta: number };

/** Segment `index` of a loop as an arc; see setRadius. Code outline.sagitta when that is not more than 0. */
export function withArc(loop: Loop, index: number, size: ArcSize, bulge: Bulge | undefined): Result<Loop> {
  const [start, end] = [nodeOf(loop, index), nodeOf(loop, index + 1)];
  const before = segmentOf(loop, index);
  const clockwise =
    bulge === undefined && before.kind === 'arc' ? before.clockwise : turnsClockwise(loop, bulge ?? 'outward');
  const arc = arcOfSize(start, end, size, clockwise);
  if (!arc.ok) return arc;
  return ok({ ...loop, segments: loop.segments.map((segment, at) => (at === index ? arc.value : segment)) });
}

/** An outline run clockwise bulges outward where its arcs turn clockwise. */
function turnsClockwise(loop: Loop, bulge: Bulge): boolean {
  const path = pathOf(loop);
  return (bulge === 'outward') === (path.ok && signedArea(path.value) > 0);
}

function arcOfSize(start: Segment['to'], end: Segment['to'], size: ArcSize, clockwise: boolean): Result<Segment> {
  const chord = distance(start, end);
  if ('sagitta' in size) {
    const { sagitta } = size;
    if (sagitta > 0 && Number.isFinite(sagitta)) return ok(arcOfSagitta(start, end, sagitta, clockwise));
    return fail('bridge.outline', 'outline.sagitta', 'The height of an arc over its chord is more than 0.');
  }
  const { radius } = size;
  if (!(radius > 0) || !Number.isFinite(radius))
    return fail('bridge.outline', 'outline.radius', 'A radius is more than 0.');
  if (chord > 2 * radius + HALF_CHORD_MM)
    return fail(
      'bridge.outline',
      'outline.radiusSmall',
      `The ends lie ${chord.toFixed(2)} mm apart, so that the radius is at least ${(chord / 2).toFixed(2)} mm.`,
    );
  return ok(arcOfRadius(start, end, radius, clockwise, false));
}
