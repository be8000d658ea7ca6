import type { SaddlePlace } from '../../bridge/types';
import type { Project } from '../../document/types';
import type { Board, Scale, StringPlace } from '../../instrument/types';
import type { Result } from '../../result';
import { heightOf } from '../heightOf';
import { heightLimitsInUse } from '../limitsInUse';
import type { HeightChain } from '../types';

/** The chain of heights for the side view: with the straightedge as read, or as it is taken to be until then. */
export interface SideHeights {
  readonly chain: HeightChain;
  /** Straightedge over the bridge, mm. */
  readonly airspace: number;
  readonly read: boolean;
}

type Needed = Pick<Project, 'instrument' | 'setup' | 'bridge' | 'height' | 'limits'>;

/**
 * The chain of heights. Until the straightedge is read it is taken to lie in the middle of its limits, so that the saddle
 * can be looked at. Codes: those of heightChain.
 */
export const sideHeights = (
  project: Needed,
  scale: Scale,
  board: Board,
  strings: readonly StringPlace[],
  saddle: SaddlePlace,
): Result<SideHeights> => {
  const { height, limits } = project;
  const { least, most } = heightLimitsInUse(height.kind, limits).airspace;
  const read = height.straightedge !== null;
  const airspace = height.straightedge ?? (least + most) / 2;
  const chain = heightOf({ ...project, height: { ...height, straightedge: airspace } }, scale, board, strings, saddle);
  if (chain === null) throw new RangeError('Expected a chain of heights for a straightedge that is given.');
  return chain.ok ? { ok: true, value: { chain: chain.value, airspace, read } } : chain;
};
