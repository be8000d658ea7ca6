import { at, sideShape, sideText, steps } from '../../../drawing/sideView/sideItems';
import type { Item } from '../../../drawing/types';
import { sagitta } from '../../../height/sagitta';

const COUNT = 60;

/**
 * The inside caul from its end's side, seen along the strings, true size: its plate face rounded to the dome, so that the top
 * is held to its own shape. halves: from the centreline to both ends, the bass first. radius: null for a flat top.
 */
export const domeProfile = (
  halves: readonly [number, number],
  thick: number,
  radius: number | null,
): readonly Item[] => {
  const [bass, treble] = halves;
  const face = steps(-bass, treble, radius === null ? 1 : COUNT).map((x) => at(x, thick - sagitta(radius, x)));
  return [
    sideShape('dome', 'inside caul', 'outline', ...face, at(treble, 0), at(-bass, 0)),
    sideText('plate-face', 'inside caul', 'heading', at(0, thick - 5), 'PLATE FACE up', 'middle'),
    sideText('clamp-face', 'inside caul', 'note', at(0, 4), 'CLAMP FACE down', 'middle'),
    sideText('bass', 'inside caul', 'heading', at(2 - bass, thick / 2), 'BASS', 'start'),
    sideText('treble', 'inside caul', 'heading', at(treble - 2, thick / 2), 'TREBLE', 'end'),
  ];
};
