import type { Sole } from '../../document/soleTypes';
import type { Point } from '../../geom/types';
import { sagitta } from '../../height/sagitta';
import type { SoleFit } from '../../height/sole/soleTypes';
import { at, steps } from './sideItems';

const COUNT = 40;

/** Height of the sole at x, as the bridge stands level, mm. */
export const soleHeight = (sole: Sole, x: number): number => 0 - sagitta(sole.across, x);

/** The bridge seen along the strings, from the bass tip over its upper face to the treble tip and back along its sole. */
export const lengthProfile = (sole: Sole, { places }: SoleFit, thickness: number): readonly Point[] => {
  const { bassTip, bassWing, trebleWing, trebleTip } = places;
  const { tip, inner } = sole.wing;
  const lean = tip * Math.tan(sole.draft);
  const base = (x: number): number => soleHeight(sole, x);
  return [
    at(bassTip, base(bassTip)),
    at(bassTip + lean, base(bassTip) + tip),
    at(bassWing, base(bassWing) + inner),
    ...steps(bassWing, trebleWing, COUNT).map((x) => at(x, thickness - sagitta(sole.face, x))),
    at(trebleWing, base(trebleWing) + inner),
    at(trebleTip - lean, base(trebleTip) + tip),
    ...steps(trebleTip, bassTip, 2 * COUNT).map((x) => at(x, base(x))),
  ];
};

/** The top under the bridge, which rests on it, and a little beyond its tips. */
export const topProfile = (sole: Sole, { curve }: SoleFit, beyond: number): readonly Point[] => {
  const heights = curve.map(({ x, y }) => ({ x, y: soleHeight(sole, x) - y }));
  const onFrom = (from: Point | undefined, to: Point | undefined, by: number): readonly Point[] => {
    if (from === undefined || to === undefined) return [];
    const slope = (to.y - from.y) / (to.x - from.x);
    return [at(to.x + by, to.y + slope * by)];
  };
  return [
    ...onFrom(heights[1], heights[0], -beyond),
    ...heights.map(({ x, y }) => at(x, y)),
    ...onFrom(heights.at(-2), heights.at(-1), beyond),
  ];
};
