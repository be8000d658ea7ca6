import type { Hand } from '../document/types';
import type { Path } from '../geom/types';
import { handedItem } from './handed';
import type { Item } from './types';

/** Where the finish that stays under the rim ends, on the hand's side; `outlines` in the instrument frame. */
export const drawFinishLine = (outlines: readonly Path[], hand: Hand): readonly Item[] =>
  outlines.map((path, index) =>
    handedItem(hand, {
      kind: 'path',
      id: `finish-${index}`,
      part: 'line of the finish',
      role: 'finish-line',
      layer: 'bridge',
      path,
    }),
  );
