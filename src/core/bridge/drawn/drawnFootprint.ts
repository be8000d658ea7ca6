import type { DrawnOutline } from '../../document/outlineTypes';
import { centrelineCrossings } from '../../geom/edit/centrelineCrossings';
import { nodesOf, type OutlineNode } from '../../geom/edit/nodesOf';
import type { Point } from '../../geom/types';
import { validatePath } from '../../geom/validatePath';
import { fail, ok, type Result } from '../../result';
import type { Footprint, NamedPoint } from '../types';
import { tipOf } from './tipOf';

const SIDES = [
  { side: 'treble', sign: 1 },
  { side: 'bass', sign: -1 },
] as const;

/** Of places equally far out toward a corner, the one farther along wins when it is so by this much, mm. */
const EQUAL_MM = 1e-6;

/** The node farthest out toward a corner of the outline, both ways counted alike, on one side; of equals the one on the edge. */
const outermost = (nodes: readonly OutlineNode[], sign: number, along: number): OutlineNode | null => {
  let best: OutlineNode | null = null;
  const reach = ({ at }: OutlineNode): number => sign * at.x + along * at.y;
  for (const node of nodes) {
    if (node.at.x * sign <= 0) continue;
    const more = best === null ? 1 : reach(node) - reach(best);
    if (best === null || more > EQUAL_MM || (more > -EQUAL_MM && along * node.at.y > along * best.at.y)) best = node;
  }
  return best;
};

/**
 * The footprint of an outline drawn freely, in its own frame. Named: on each side the corner toward the front and the one
 * toward the back ("front-treble": the outermost node there, called an edge end where it is smooth), the tip ("tip-treble"),
 * every other corner by its number ("node-5"), and the places where the outline crosses the centreline foremost and rearmost
 * ("front-crossing", "back-crossing"). No lines on its face.
 *
 * Codes: path.open, outline.offCentre (it does not cross the centreline), those of validatePath.
 */
export function drawnFootprint({ path }: DrawnOutline): Result<Footprint> {
  const valid = validatePath(path);
  if (!valid.ok) return valid;
  if (!path.closed)
    return fail('bridge.outline', 'path.open', 'The outline is open: its end must come back to its start.');
  const across = centrelineCrossings(path).map(({ y }) => y);
  if (across.length === 0)
    return fail(
      'bridge.outline',
      'outline.offCentre',
      'The outline lies wholly beside the centreline. Move it across.',
    );
  const nodes = nodesOf(path);
  const named = new Set<OutlineNode>();
  const ends = (['front', 'back'] as const).flatMap((edge) =>
    SIDES.flatMap(({ side, sign }): readonly NamedPoint[] => {
      const node = outermost(nodes, sign, edge === 'front' ? -1 : 1);
      if (node === null) return [];
      named.add(node);
      const what = node.join === 'corner' ? 'corner' : 'edge end';
      return [{ id: `${edge}-${side}`, label: `${edge} ${what}, ${side}`, at: node.at }];
    }),
  );
  const corners = nodes
    .filter((node) => node.join === 'corner' && !named.has(node))
    .map(({ index, at }) => ({ id: `node-${index + 1}`, label: `node ${index + 1}, ${placeOf(at)}`, at }));
  return ok({
    outline: path,
    points: [
      ...ends,
      ...SIDES.map(({ side, sign }) => ({ id: `tip-${side}`, label: `tip, ${side}`, at: tipOf(path, sign) })),
      ...corners,
      { id: 'front-crossing', label: 'front edge on the centreline', at: { x: 0, y: Math.min(...across) } },
      { id: 'back-crossing', label: 'back edge on the centreline', at: { x: 0, y: Math.max(...across) } },
    ],
    faceLines: [],
  });
}

const placeOf = ({ x }: Point): string => (x === 0 ? 'on the centreline' : x > 0 ? 'treble' : 'bass');
