import type { Project } from '../../core/document/types';
import { makeSymmetric } from '../../core/geom/edit/makeSymmetric';
import { mirrorPath } from '../../core/geom/mirrorPath';
import { clockwiseSegments } from '../../core/geom/offset/clockwiseSegments';
import { pathBounds } from '../../core/geom/pathBounds';
import { signedArea } from '../../core/geom/signedArea';
import type { Path } from '../../core/geom/types';
import { validatePath } from '../../core/geom/validatePath';
import { fail, ok, type Result } from '../../core/result';
import { alikeByShape } from './alikeByShape';
import { placeInFootprint } from './placeInFootprint';

/**
 * A closed path, as seen from the front with the nut up (mm, y down), becomes the outline of the bridge: clockwise, centred
 * on the centreline, its front edge (least y on the centreline) at 0. On a left-handed instrument it is turned over, since
 * the project is kept right-handed: what was seen stays as seen. Codes: path.open, path.empty, and those of validatePath.
 */
export const takeOutline = (project: Project, path: Path): Result<Project> => {
  const valid = validatePath(path);
  if (!valid.ok) return valid;
  if (!path.closed) return fail('bridge.outline', 'path.open', 'Expected a closed outline, got an open line.');
  const { minX, maxX } = pathBounds(path);
  if (!(maxX > minX) || signedArea(path) === 0)
    return fail('bridge.outline', 'path.empty', 'Expected an outline that encloses something, got none.');
  const seen = project.instrument.hand === 'left' ? mirrorPath(path) : path;
  const started = clockwiseSegments(seen);
  const start = started[0]?.start ?? seen.start;
  const placed = placeInFootprint({ start, segments: started.map(({ segment }) => segment), closed: true });
  // Alike on both sides by shape: node by node as well, so that edits can keep it so.
  const alike = alikeByShape(placed) ? makeSymmetric(placed, 'treble') : null;
  const outline =
    alike?.ok === true
      ? { kind: 'drawn' as const, path: alike.value.path, symmetric: true }
      : { kind: 'drawn' as const, path: placed, symmetric: false };
  return ok({ ...project, bridge: { ...project.bridge, outline } });
};
