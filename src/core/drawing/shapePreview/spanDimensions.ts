import { linearDimension } from '../dimensions/linearDimension';
import { wordsWidth } from '../dimensions/pieces';
import type { Item } from '../types';
import type { LeaderEdge } from './measureParameter';
import { PICTURE } from './pictureLayout';
import type { Dimensioned } from './types';

/**
 * Dimensions across the bridge, the shortest nearest to it, at the edge that has no leaders: ahead of y = 0, or behind
 * `depth`. Words stand away from the bridge, so that no witness line runs through them.
 */
export const spanDimensions = (
  spans: readonly Dimensioned<'span'>[],
  leaders: LeaderEdge,
  depth: number,
): readonly Item[] =>
  [...spans]
    .sort((a, b) => a.measure.to.x - a.measure.from.x - (b.measure.to.x - b.measure.from.x))
    .flatMap(({ name, text, measure: { from, to } }, row) => {
      const out = PICTURE.firstSpan + row * PICTURE.nextSpan;
      const level = leaders === 'back' ? -out : depth + out;
      const middle = (from.x + to.x) / 2;
      // Words that would run past the tip are moved in over their line.
      const room = PICTURE.half - PICTURE.pad - wordsWidth(text) / 2;
      return linearDimension(from, to, {
        id: name,
        part: name,
        layer: 'dimensions',
        text,
        direction: 'across',
        offset: level - from.y,
        words: leaders === 'back' ? 'above' : 'below',
        slide: Math.max(-room, Math.min(room, middle)) - middle,
      });
    });
