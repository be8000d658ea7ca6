import { failed, type Issue, issue, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { roundedRectangle } from './roundedRectangle';

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
  return ok({
    ...roundedRectangle(p.length, p.full, p.corner),
    faceLines: [1, -1].map((side) => ({
      start: { x: (side * p.block) / 2, y: 0 },
      segments: [{ kind: 'line', to: { x: (side * p.block) / 2, y: p.full } }],
      closed: false,
    })),
  });
};
