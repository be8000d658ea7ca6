import type { Hand } from '../../document/types';
import { handedItem } from '../handed';
import { moveItem } from '../moveItem';
import type { ShapePreview } from './types';

/** A preview as it is for the other hand: dimensions change sides, words stay upright. */
export const handedPicture = (hand: Hand, picture: ShapePreview): ShapePreview => ({
  ...picture,
  items:
    hand === 'right'
      ? picture.items
      : picture.items.map((item) => moveItem(handedItem(hand, item), { x: picture.width, y: 0 })),
});
