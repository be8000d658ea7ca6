import { ok, type Result } from '../../result';
import type { Footprint, NamedPoint } from '../types';
import { type BellyParameters, belly } from './belly';
import { turnedPoint, turnedSegments } from './halfTurn';

const turnedName = (name: string): string =>
  name.replace(/front|back/g, (word) => (word === 'front' ? 'back' : 'front'));

/** The named points with front and back exchanged, those of the front first. */
const turnedPoints = (points: readonly NamedPoint[], full: number): readonly NamedPoint[] => {
  const turned = points.map(({ id, label, at }) => ({
    id: turnedName(id),
    label: turnedName(label),
    at: { x: at.x, y: full - at.y },
  }));
  const isFront = ({ id }: NamedPoint): boolean => id.startsWith('front');
  return [...turned.filter(isFront), ...turned.filter((point) => !isFront(point))];
};

/**
 * Bridge with a belly toward the nut, in the footprint frame: the one toward the tail, turned end for end. The belly
 * reaches foremost, so that y = 0 on the centreline, and the wings' front edges lie behind it. Codes: those of belly.
 */
export const bellyNut = (p: BellyParameters): Result<Footprint> => {
  const toTail = belly(p);
  if (!toTail.ok) return toTail;
  const { outline, points } = toTail.value;
  return ok({
    outline: {
      start: turnedPoint(outline.start, p.full),
      segments: turnedSegments(outline.segments, p.full),
      closed: true,
    },
    points: turnedPoints(points, p.full),
    faceLines: [],
  });
};
