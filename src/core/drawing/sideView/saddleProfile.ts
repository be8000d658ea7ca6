import type { Point } from '../../geom/types';
import type { SaddleBlank } from '../../height/sole/saddleBlank';
import { at, steps } from './sideItems';

const COUNT = 60;

/** Outline of the saddle seen along the strings: flat foot, upright ends, one arc on top. Foot at height 0, middle at 0. */
export const saddleProfile = ({ length, top }: SaddleBlank): readonly Point[] => [
  at(-length / 2, 0),
  ...steps(-length / 2, length / 2, COUNT).map((along) => at(along, top.at(along))),
  at(length / 2, 0),
];
