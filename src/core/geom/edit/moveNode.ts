import type { Result } from '../../result';
import type { Path, Point } from '../types';
import { moveNodes } from './moveNodes';

/** Node `index` moved to a place, mm; see moveNodes for what goes along, what symmetric means, and the codes. */
export const moveNode = (path: Path, index: number, to: Point, symmetric = false): Result<Path> =>
  moveNodes(path, new Map([[index, to]]), symmetric);
