import type { Segment } from '../../geom/types';
import { failed, type Issue, issue, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { corner } from './corner';
import { edgePoints } from './edgePoints';

export interface TieBlockParameters {
  readonly length: number;
  readonly full: number;
  readonly block: number;
  readonly corner: number;
}

const path = (name: keyof TieBlockParameters): string => `bridge.outline.parameters.${name}`;

/** Classical bridge with a tie block between two wings, in the footprint frame. */
export const tieBlock = (p: TieBlockParameters): Result<Footprint> => {
  const issues: Issue[] = [];
  if (p.block >= p.length)
    issues.push(issue(path('block'), 'tie-block.block', 'The tie block is shorter than the bridge.'));
  if (p.corner > p.full / 2 || p.corner > p.length / 2)
    issues.push(issue(path('corner'), 'tie-block.corner', 'The corner radius is at most half the bridge width.'));
  if (issues.length > 0) return failed(issues);
  const half = p.length / 2;
  const c = p.corner;
  const straightEnd = p.full - 2 * c > 0;
  const end = (x: number, y: number): readonly Segment[] => (straightEnd ? [{ kind: 'line', to: { x, y } }] : []);
  return ok({
    outline: {
      start: { x: -(half - c), y: 0 },
      segments: [
        { kind: 'line', to: { x: half - c, y: 0 } },
        ...corner({ x: half, y: c }, { x: half - c, y: c }, c),
        ...end(half, p.full - c),
        ...corner({ x: half - c, y: p.full }, { x: half - c, y: p.full - c }, c),
        { kind: 'line', to: { x: -(half - c), y: p.full } },
        ...corner({ x: -half, y: p.full - c }, { x: -(half - c), y: p.full - c }, c),
        ...end(-half, c),
        ...corner({ x: -(half - c), y: 0 }, { x: -(half - c), y: c }, c),
      ],
      closed: true,
    },
    points: edgePoints(c, { x: half - c, y: 0 }, { x: half - c, y: p.full }),
    faceLines: [1, -1].map((side) => ({
      start: { x: (side * p.block) / 2, y: 0 },
      segments: [{ kind: 'line', to: { x: (side * p.block) / 2, y: p.full } }],
      closed: false,
    })),
  });
};
