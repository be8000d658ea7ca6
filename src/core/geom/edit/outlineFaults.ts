import { type Issue, issue } from '../../result';
import { closedSegments } from '../closedSegments';
import { pathBounds } from '../pathBounds';
import { signedArea } from '../signedArea';
import type { Path, Point } from '../types';
import { validatePath } from '../validatePath';
import { crossingOf } from './crossingOf';

/** Over-all length and width of an outline, mm: a bridge is neither smaller nor larger. Common practice, no source. */
const OUTLINE_SIZE_MM = { least: 5, most: 500 } as const;

/** Least area of an outline, mm²: that of the smallest size both ways. */
const LEAST_AREA_MM2 = OUTLINE_SIZE_MM.least ** 2;

/** More nodes than anyone draws; keeps every change quick. */
const MOST_NODES = 2000;

const field = 'bridge.outline';

/**
 * Everything that keeps a path from being the outline of a bridge; none means that it can be. Codes: those of validatePath,
 * path.open, outline.nodes (more than 2000), outline.size (over all below 5 or above 500 mm), outline.tiny (an area below
 * 25 mm²), outline.crossing.
 */
export function outlineFaults(path: Path): readonly Issue[] {
  const valid = validatePath(path);
  if (!valid.ok) return valid.issues;
  if (!path.closed) return [issue(field, 'path.open', 'The outline is open: its end must come back to its start.')];
  const nodes = closedSegments(path).length;
  if (nodes > MOST_NODES)
    return [issue(field, 'outline.nodes', `The outline has ${nodes} nodes; ${MOST_NODES} are the most.`)];
  const { minX, minY, maxX, maxY } = pathBounds(path);
  const crossing = crossingOf(path);
  return [
    ...sizeFaults('length', maxX - minX),
    ...sizeFaults('width', maxY - minY),
    ...(crossing === null ? areaFaults(path) : [crossingFault(crossing)]),
  ];
}

function sizeFaults(name: 'length' | 'width', mm: number): readonly Issue[] {
  const { least, most } = OUTLINE_SIZE_MM;
  if (mm >= least && mm <= most) return [];
  return [
    issue(
      field,
      'outline.size',
      `The ${name} of the outline goes from ${least} to ${most} mm; it is ${mm.toFixed(2)} mm.`,
    ),
  ];
}

/** Where loops overlap, areas cancel: this is asked only of an outline that does not cross itself. */
function areaFaults(path: Path): readonly Issue[] {
  if (Math.abs(signedArea(path)) >= LEAST_AREA_MM2) return [];
  return [issue(field, 'outline.tiny', `The outline encloses less than ${LEAST_AREA_MM2} mm².`)];
}

function crossingFault({ x, y }: Point): Issue {
  const side = x < 0 ? 'bass' : 'treble';
  const place = `${Math.abs(x).toFixed(1)} mm to the ${side} side, ${y.toFixed(1)} mm behind the front edge`;
  return issue(field, 'outline.crossing', `The outline crosses or touches itself: ${place}.`);
}
